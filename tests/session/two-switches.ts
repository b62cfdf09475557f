import type { BenchOptions } from '../../src/bench/bench.ts';
import type { SessionOptions } from './virtual-session.ts';

const file = `machine: Two switches
units: mm
polarity: each
inputs:
  x-home:
    duty: [home, limit]
    axis: X
    end: negative
    place: left end of the rail
    contact: normally closed
    voltage: 5 V
  stop:
    duty: [stop]
    place: red button at the front
    contact: normally closed
    voltage: 5 V
axes:
  X: { travel: 300, homes: negative }
`;

/** A machine small enough to be commissioned hundreds of times: two inputs, five reports a second, no positions. */
export const twoSwitches: BenchOptions = {
  truth: {
    inputs: [
      {
        name: 'x-home',
        connector: 'A',
        joined: 'single',
        setting: 'active when open',
        limit: true,
        switches: [
          {
            subject: 'x-home',
            contact: 'normally closed',
            stop: false,
            dog: { axis: 'X', end: 'negative', actuates: -2, frees: -1.6 },
          },
        ],
      },
      {
        name: 'stop',
        connector: 'B',
        joined: 'single',
        setting: 'active when open',
        limit: false,
        switches: [{ subject: 'stop', contact: 'normally closed', stop: true }],
      },
    ],
    axes: [
      {
        letter: 'X',
        turns: false,
        motors: 1,
        stops: [-5, 305],
        stands: 120,
        homes: 'negative',
        homeInputs: ['x-home'],
        homeValue: 0,
        homeOrder: 1,
        backOff: 2,
        approach: 15,
        slow: 2,
        rapid: 60,
        acceleration: 300,
        reaction: 10,
        step: 0.0125,
        soft: [0, 300],
      },
    ],
  },
  faults: ['normally-open:x-home'],
  telling: { rate: 5, positions: false },
};

/** What a full session on it comes to: the row of x-home is 0 1 0, of the stop 0 1 1, one press each. */
export const mustBeJudged: readonly string[] = [
  'open-wire stop: proved edge',
  'open-wire x-home: limited edge break-undetected declared-otherwise',
  'press stop: proved edge',
  'press x-home: proved edge',
  'rest stop: proved commanded',
  'rest x-home: proved commanded',
  'stop stop: proved told',
];

/** The same two, with a vertical axis that must be propped and plugs of which no voltage is told. */
export const fileWithMoreToAsk = file
  .replaceAll('    voltage: 5 V\n', '')
  .replace('axes:\n', 'axes:\n  Z: { travel: 80 }\n');

export const briefly: NonNullable<SessionOptions['session']> = {
  machineText: file,
  presses: 1,
  restSeconds: 1,
};
