import { motionEntry } from './motion-entry.ts';

export const zeroedInPlace = motionEntry<'zeroed-in-place'>({
  title: 'The axis was zeroed where it stood',
  said: ({ axis }) => `The numbers of ${axis} were set anew without any motion and without a trip.`,
  means:
    'This axis was declared, not found: the controller homes it without a switch. Its soft limits are only as good as the place it stood in.',
  next: [
    'Enable homing of this axis with its switch in the controller.',
    'Until then put it to the same place by hand before each homing, and trust no soft limit.',
  ],
});

export const zeroNotSet = motionEntry<'zero-not-set'>({
  title: 'Homing ended without a zero',
  said: ({ axis }) => `${axis} went through its homing and its numbers were not set at the end.`,
  means:
    'The machine zero is where it was before, wherever that was. Soft limits and work offsets are counted from a place that was not found.',
  next: [
    'Set the home value of this axis, and that homing sets it.',
    'Home once more and look at the machine position.',
  ],
});

export const noReversal = motionEntry<'no-reversal'>({
  title: 'The axis stopped on its switch and did not come back',
  said: ({ axis }) => `${axis} reached its switch and no way back was commanded.`,
  means:
    'Homing ended at the trip. Either no back-off is set, or the same input stopped the machine as a limit before homing could go on.',
  next: [
    'Set a back-off larger than the switch needs to let go.',
    'Where home and limit share one input, set the controller to ignore the limit while it homes.',
  ],
});

export const doesNotClear = motionEntry<'does-not-clear'>({
  title: 'The switch does not let go as the axis backs off',
  said: ({ axis }) => `${axis} was commanded back off its switch, which stayed operated.`,
  means:
    'Either the axis did not really come back, and then it pressed on into its switch, or it did and the switch holds. Only eyes at the machine tell which.',
  next: [
    'Look whether the axis came back. If not: the direction signal of its drive, drive power off.',
    'If it did: a longer back-off, or a switch that sticks.',
  ],
});

export const referenceLost = motionEntry<'reference-lost'>({
  title: 'The machine zero is not to be trusted any more',
  said: ({ axis }) => `After the last homing something made the zero of ${axis} doubtful.`,
  means:
    'A stop in the middle of a move, lost motor power, a fault or a restart leave the numbers as they were and the machine somewhere else; a machine zero that is set without homing leaves the machine and changes the numbers. Soft limits are wrong by the same amount.',
  next: ['Home once more before anything else moves.', 'Touch off the work again if it matters.'],
});

export const endsInFault = motionEntry<'ends-in-fault'>({
  title: 'The homing ended in a fault',
  said: ({ axis }) => `The controller reported a fault while ${axis} homed.`,
  means:
    'The controller gave up. Its own message says why; what the stream showed until then stands beside this.',
  next: [
    'Read what the controller itself says, and clear it by your own control.',
    'Then home once more with a hand on the stop.',
  ],
});

export const slowNotSlower = motionEntry<'slow-not-slower'>({
  title: 'The second approach is not slower than the first',
  said: ({ axis }) => `${axis} came to its switch the second time as fast as the first.`,
  means:
    'The slow approach is what makes a zero repeat: the way run between trip and stop shrinks with the square of the speed. Set alike, the second approach adds nothing.',
  next: ['Set the slow approach to a tenth of the fast one or less.', 'Home once more.'],
});

export const turnsOneWay = motionEntry<'turns-one-way'>({
  title: 'The axis goes one way, whatever it is told',
  said: ({ axis }) => `The tool went the same way for ${axis} there and back.`,
  means:
    'The direction signal between controller and drive does nothing. Such an axis pushes on into its switch when it is told to back off, and into its end when it is told to come back.',
  next: [
    'Drive power off and the drives discharged; then look at the direction wire from the controller to the drive of this axis, both ends.',
    'Exchange the drive for one of another axis only where you know how, power off.',
    'Then make the first move once more.',
  ],
});

export const otherAxisMoves = motionEntry<'other-axis-moves'>({
  title: 'Another axis moves in its place',
  said: ({ axis }) => `${axis} was commanded and another axis moved.`,
  means:
    'The plugs of two motors are on each other’s drives. Sent to its switch, such an axis drives the other one on without end, and no switch of its own stops it.',
  next: [
    'Drive power off and the drives discharged; then exchange the two motor plugs.',
    'Make the first move of both axes once more.',
  ],
});
