import { motionEntry } from './motion-entry.ts';

export const noTrip = motionEntry<'no-trip'>({
  title: 'The seek found no switch',
  said: ({ axis }) => `${axis} was commanded to its switch and no trip of it came.`,
  means:
    'The stream shows commands only: the axis may have run the wrong way, stood still, stopped short or gone by its switch. Eyes at the machine tell these apart. Until then nothing may home.',
  next: [
    'Look: did it move, which way, did the motor buzz, where does it stand now?',
    'Follow what fits below; motor wiring only with drive power off and the drives discharged.',
    'Repeat the first seek.',
  ],
});

export const scatteredTrips = motionEntry<'scattered-trips'>({
  title: 'The switch trips at different places',
  said: ({ axis }) => `The trips of ${axis} lie further apart than the switch and the reports explain.`,
  means:
    'A zero that is found somewhere else each time is no zero. Noise on the input, lost steps or a slipping coupling do this, and each shows in its own way.',
  next: [
    'Look whether the axis really stood at its switch at each trip.',
    'Check coupling, pulleys and grub screws; lower speed and acceleration.',
    'Lead the switch cable away from motor and spindle cables, and take the shield to ground at one end.',
  ],
});

export const pressedAtStart = motionEntry<'pressed-at-start'>({
  title: 'The switch was operated before the axis moved',
  said: ({ axis }) => `The home input of ${axis} was already operated when the seek began.`,
  means:
    'The axis may stand on its switch, another axis may stand on one that shares the input, or the input is stuck. A seek that begins so finds its zero where it happens to stand.',
  next: [
    'Look whether anything is on the switch; move the axis off by your own control.',
    'If nothing is on it, repeat press and open wire of this input.',
  ],
});

export const crawls = motionEntry<'crawls'>({
  title: 'The approach crawls',
  said: ({ axis }) => `${axis} approached far slower than an approach is set, or than the file tells.`,
  means:
    'Approach and slow speed may be exchanged, or a speed was typed in other units. It harms nothing and costs time; a factor of 25.4 or 60 is a wrong unit.',
  next: ['Compare the approach speed in the controller with the file, units and all.', 'Seek once more.'],
});

export const blockedElsewhere = motionEntry<'blocked-elsewhere'>({
  title: 'Another operated switch keeps it from moving',
  said: ({ axis }) => `${axis} did not move, and a switch of another axis or end was operated.`,
  means:
    'Many controllers start no motion while any limit is operated. The fault is at that switch, not at this axis.',
  next: ['Free that switch: move its axis off, or repeat press and open wire for it.', 'Seek once more.'],
});

export const inferredTrip = motionEntry<'inferred-trip'>({
  title: 'The trip was inferred, not seen',
  said: ({ axis }) => `${axis} turned and set its zero, and no report showed its input operated.`,
  means:
    'The trip was shorter than the time between two reports, which is usual for a slow stream. That the right switch did it was not seen.',
  next: [
    'Let the controller report more often, or lower the approach speed, and seek once more.',
    'The press check still says which input the switch works.',
  ],
});

export const overruns = motionEntry<'overruns'>({
  title: 'The axis runs on past its switch',
  said: ({ axis, by }) =>
    by === undefined
      ? `${axis} went on after its switch was operated.`
      : `${axis} went on after its switch was operated, ${by.toFixed(1)} further than it may.`,
  means:
    'Past its overtravel a switch is crushed, its dog bends, and the trip point wanders from day to day. The stopping distance grows with the square of the speed: half the approach speed needs about a quarter of it.',
  next: [
    'Lower the approach speed, or raise the deceleration where the motors can hold it.',
    'Look whether switch or dog are bent; a longer overtravel helps as well.',
  ],
});

export const notActedOn = motionEntry<'not-acted-on'>({
  title: 'The controller does not act on this input',
  said: ({ axis, input }) =>
    `${input ?? 'The home input'} was reported operated and the controller drove ${axis} on as before.`,
  means:
    'That an input is reported does not mean that anything is done about it. This switch stops nothing: the axis runs into its end.',
  next: [
    'Enable the input for homing and as a limit in the controller.',
    'Then seek at the lowest speed with a hand on the stop.',
  ],
});
