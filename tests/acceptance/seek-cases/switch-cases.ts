import type { SeekCase } from './seek-case.ts';

const notSent = 'homing X: not-tested seek-not-proved';
const threeAxes = ['x-home', 'y-home', 'z-home', 'stop'];
/** What happens at the switch. */
export const switchCases: readonly SeekCase[] = [
  {
    name: 'its switch is operated before it sets off',
    plays: [
      {
        because: 'Somebody drove the axis onto it after the presses.',
        moved: ['X', -63.1],
        found: ['seek X: failed pressed-at-start(stands-on-switch)', notSent],
      },
      {
        because: 'Its lever was bent since the presses: operated, with nothing on it.',
        later: 'bent-lever:x-home',
        found: ['seek X: failed pressed-at-start(input-stuck)', notSent],
      },
    ],
  },
  {
    name: 'it stands beyond its dog',
    plays: [
      {
        because: 'It begins past its switch and runs into the metal behind it.',
        fault: 'beyond-dog:x-home',
        stands: {},
        found: ['seek X: failed no-trip(beyond-the-dog)', notSent],
      },
    ],
  },
  {
    name: 'it is zeroed where it stands, without a switch',
    plays: [
      {
        because: 'A number is set, nothing moves. The seek by hand found the switch all the same.',
        fault: 'zeroed-in-place:X',
        found: ['homing X: failed zeroed-in-place(zeroed-in-place)'],
      },
      {
        because: 'The same among axes that home before and after it.',
        fault: 'zeroed-in-place:X',
        only: threeAxes,
        found: ['homing X: failed zeroed-in-place(zeroed-in-place)'],
      },
    ],
  },
  {
    name: 'it trips and does not turn back',
    plays: [
      {
        because: 'The homing ends on the switch.',
        fault: 'stays-on-switch:X',
        found: ['homing X: failed no-reversal(no-reversal)'],
      },
      {
        because: 'Z was home by then and is sound; Y never set off, of which nothing follows.',
        fault: 'stays-on-switch:X',
        only: threeAxes,
        found: ['homing X: failed no-reversal(no-reversal)', 'homing Y: inconclusive ended-by-another'],
      },
    ],
  },
  {
    name: 'it is told to turn back and does not',
    plays: [
      {
        because: 'The first move shows it where nothing can be hit: the same way there and back.',
        fault: 'turns-one-way:X',
        found: ['seek X: failed turns-one-way(does-not-turn-back)', notSent],
      },
    ],
  },
  {
    name: 'it turns back and its switch stays operated',
    plays: [
      {
        because: 'Half the way that the lever needs to spring back.',
        fault: 'back-off-short:X',
        found: ['homing X: failed does-not-clear(does-not-clear)'],
      },
      {
        because: 'Y, on its way at the same time and in order until then, was stopped with X.',
        fault: 'back-off-short:X',
        only: threeAxes,
        atOnce: true,
        found: ['homing X: failed does-not-clear(does-not-clear)', 'homing Y: inconclusive ended-by-another'],
      },
      {
        because: 'A lever that lets go too late.',
        fault: 'late-release:x-home',
        found: ['homing X: failed does-not-clear(does-not-clear)'],
      },
    ],
  },
  {
    name: 'its trip is lost to bounce or to a filter',
    plays: [
      {
        because: 'Worked slowly the contact never settles: the second trip does not come.',
        fault: 'flutters-slow:x-home',
        found: ['homing X: failed no-trip(trip-lost-to-bounce)'],
      },
      {
        because: 'Over before the filter takes it: the axis was seen on its switch, and no report shows it.',
        fault: 'lost-at-speed:x-home',
        found: ['seek X: failed no-trip(trip-not-taken)', notSent],
      },
    ],
  },
  {
    name: 'it turns at its switch and no report shows the trip',
    plays: [
      {
        because: 'That the right switch did it is inferred, and said to be.',
        fault: 'trips-untold:x-home',
        found: ['homing X: limited inferred-trip(trip-between-reports)'],
      },
      {
        because: 'The same among the others, whose trips are reported.',
        fault: 'trips-untold:x-home',
        only: threeAxes,
        found: ['homing X: limited inferred-trip(trip-between-reports)'],
      },
    ],
  },
  {
    name: 'noise trips its input on the way',
    plays: [
      {
        because: 'The axis stops in mid-travel. That it blinks while Y and Z move is no other switch’s trip.',
        fault: 'noise-while-moving:x-home',
        only: threeAxes,
        found: ['seek X: failed scattered-trips(noise-trip)', notSent],
      },
    ],
  },
  {
    name: 'another axis stands on a switch that shares its input',
    plays: [
      {
        because: 'Its press cannot be proved, and nothing moves.',
        on: 'portal',
        only: ['z-a-home', 'stop'],
        stands: { A: 5 },
        found: [
          'press z-a-home/top: failed stuck-active chain-blocked',
          'seek Z: not-tested input-unproved',
          'homing Z: not-tested seek-not-proved',
        ],
      },
      {
        because:
          'Somebody turned A onto its index after the presses: Z’s input is operated, its switch is free.',
        on: 'portal',
        only: ['z-a-home/top', 'stop'],
        moved: ['A', -68],
        found: [
          'seek Z: failed pressed-at-start(input-stuck, other-axis-on-input)',
          'homing Z: not-tested seek-not-proved',
        ],
      },
    ],
  },
  {
    name: 'a limit of another axis is operated and nothing starts',
    plays: [
      {
        because: 'Y stands on its far limit, and this controller moves nothing then.',
        fault: 'refuses-at-limit',
        stands: { X: 60, Y: 440 },
        found: ['seek X: failed blocked-elsewhere(blocked-elsewhere)', notSent],
      },
    ],
  },
  {
    name: 'its back-off runs into the switch of the other end',
    plays: [
      {
        because: 'It comes back as far as its travel.',
        fault: 'back-off-long:X',
        found: ['homing X: failed wrong-switch(backs-into-a-switch)'],
      },
    ],
  },
];
