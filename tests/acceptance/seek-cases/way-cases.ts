import type { CheckName } from '../../../src/model/verdict.ts';
import type { SeekCase } from './seek-case.ts';

const notSent = 'homing X: not-tested seek-not-proved';
const threeAxes = ['x-home', 'y-home', 'z-home', 'stop'];
const andRepeated: readonly CheckName[] = ['press', 'stop', 'seek', 'homing', 'repeat'];
const andMeasured: readonly CheckName[] = ['press', 'stop', 'seek', 'homing', 'scale'];

/** What happens on the way to the switch, and after it. */
export const wayCases: readonly SeekCase[] = [
  {
    name: 'its seek is set shorter than its travel',
    plays: [
      {
        because: 'It ends by itself, short of its switch, after less than its travel.',
        fault: 'seek-short:X',
        stands: {},
        found: ['seek X: failed no-trip(seek-too-short)', notSent],
      },
    ],
  },
  {
    name: 'steps are lost, or what works the switch slips',
    plays: [
      {
        because:
          'Lost and lost again on the way back, it may look sound in two homings; in ten the count wanders, and a gauge shows the axis in one place.',
        fault: 'loses-steps:X',
        checks: andRepeated,
        found: ['repeat X: failed scattered-trips(loses-steps)'],
      },
      {
        because:
          'The dog slips outwards each time: two homings show that, a gauge shows that it is the switch.',
        fault: 'dog-slips:x-home',
        checks: andRepeated,
        found: [
          'homing X: failed scattered-trips(loses-steps, switch-wanders)',
          'repeat X: failed scattered-trips(switch-wanders)',
        ],
      },
      {
        because: 'A loose bracket wanders by half a millimetre either way.',
        fault: 'bracket-loose:x-home',
        checks: andRepeated,
        found: [
          'homing X: failed scattered-trips(loses-steps, switch-wanders)',
          'repeat X: failed scattered-trips(switch-wanders)',
        ],
      },
    ],
  },
  {
    name: 'its steps for a millimetre are wrong',
    plays: [
      {
        because: 'A seek and a homing come out whole; only a length that somebody measures shows it.',
        fault: 'scale-off:X',
        checks: andMeasured,
        found: ['scale X: failed scale-off'],
      },
    ],
  },
  {
    name: 'X and Y seek before Z is up',
    plays: [
      {
        because: 'Both set off before Z had found its top; Z itself is sound.',
        fault: 'spindle-last',
        only: threeAxes,
        found: ['homing X: failed axis-order(wrong-order)', 'homing Y: failed axis-order(wrong-order)'],
      },
    ],
  },
  {
    name: 'it creeps',
    plays: [
      {
        because: 'Near its switch it comes home, slowly; its second approach is no slower than that.',
        fault: 'crawls:X',
        found: ['homing X: limited crawls(crawls) slow-not-slower'],
      },
      {
        because: 'From farther off the time is over before it is there: it was not blocked, only slow.',
        fault: 'crawls:X',
        stands: {},
        checks: ['press', 'stop', 'seek'],
        found: ['seek X: limited crawls(crawls)'],
      },
    ],
  },
  {
    name: 'nothing is reported while it homes',
    plays: [
      {
        because: 'What nobody saw is neither right nor wrong: no alarm, no direction, no finding.',
        fault: 'silent-while-homing',
        found: ['seek X: inconclusive motion-not-reported', 'seek stream: proved stream-gaps', notSent],
      },
    ],
  },
  {
    name: 'it needs more way to stop than its switch can be pressed',
    plays: [
      {
        because: 'It does brake, far behind its trip.',
        fault: 'brakes-late:X',
        found: ['seek X: failed overruns', notSent],
        dangers: ['X overruns'],
      },
    ],
  },
  {
    name: 'Z drops as it sets off',
    plays: [
      {
        because: 'Each homing finds its top somewhere else by the count, as with lost steps.',
        fault: 'sags:Z',
        only: ['z-home', 'stop'],
        found: ['homing Z: failed scattered-trips(loses-steps, switch-wanders, sags-at-start)'],
      },
    ],
  },
  {
    name: 'it was homed, and lost its place afterwards',
    plays: [
      {
        because: 'The controller restarts as the first homed axis sets off: no zero of before holds.',
        fault: 'restarts-after-homing',
        only: threeAxes,
        found: [
          'homing Z: limited reference-lost(reference-lost)',
          'homing X: limited reference-lost(reference-lost)',
          'homing Y: limited reference-lost(reference-lost)',
          'homing stream: proved controller-restarted',
        ],
      },
      {
        because:
          'Homed and then restarted on its way to the first start point: the ten homings after it are sound.',
        later: 'restarts-after-homing',
        laterAt: 'repeat',
        checks: andRepeated,
        found: [
          'repeat X: limited reference-lost(reference-lost)',
          'repeat stream: proved controller-restarted',
        ],
      },
      {
        because: 'Restarted on the way that was to be measured: no length, and no zero.',
        later: 'restarts-after-homing',
        laterAt: 'scale',
        checks: andMeasured,
        found: [
          'scale X: inconclusive reference-lost(reference-lost) stream-broke-off',
          'scale stream: proved controller-restarted',
        ],
      },
    ],
  },
];
