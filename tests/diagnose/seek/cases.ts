import type { PlanPart, Setup } from '../../../scripts/simulated-seek.mjs';
import { home, onX, type Played, xSwitches } from './played.ts';

const rest: PlanPart = { wait: 500 };
const still = (wait = 500): PlanPart => ({ activity: 'still', wait });
const fault: PlanPart = { activity: 'fault', wait: 500 };
/** A run that ends by itself, without a trip. */
const blind = (way: 1 | -1, most: number, speed = 15): readonly PlanPart[] => [
  rest,
  { activity: 'homing', way, speed, most },
  still(),
];
const toSwitch = (input = 'x-home'): PlanPart => ({
  activity: 'homing',
  way: -1,
  speed: 15,
  until: input,
  most: 60,
});
const dead = { ...xSwitches, 'x-home': { when: () => false } };
/** Home again from where the last homing left it, or from 40 mm out. */
const again = (setup: Partial<Setup> = {}): Setup => onX({ start: 0, stands: 0, ...setup });
const three = (setup: Partial<Setup> = {}): readonly Setup[] => [
  onX(setup),
  again({ ...setup, seed: 2 }),
  again({ ...setup, seed: 3 }),
];

/** From 40 mm out, tripping `at` mm before home; the homing before it tripped at `before` and set its zero 2 mm inside. */
const noisy = (at: number, seed: number, before?: number): Setup =>
  onX({
    seed,
    stands: 40,
    start: before === undefined ? 0 : 40 - (before + 2),
    switches: { ...xSwitches, 'x-home': { actuates: at, frees: at + 0.4, outwards: -1 } },
  });

const zSwitches = {
  'z-top': { actuates: 2, frees: 1.6, outwards: 1 },
  probe: { actuates: -40, outwards: -1 },
} as const;
const onZ = (setup: Partial<Setup> = {}): Setup => ({
  plan: home(1, 'z-top'),
  stands: -20,
  switches: zSwitches,
  ...setup,
});
const ySwitches = (offset = 0.5) =>
  ({
    'y-left': { actuates: -2, frees: -1.6, outwards: -1 },
    'y-right': { actuates: -2 - offset, frees: -1.6 - offset, outwards: -1 },
  }) as const;
const onY = (setup: Partial<Setup> = {}): Setup => ({
  plan: home(-1, 'y-right'),
  stands: 20,
  switches: ySwitches(),
  ...setup,
});
const uSwitches = {
  'u-ends': { when: ({ physical }: { physical: number }) => physical <= -2 || physical >= 102 },
};

export interface Case {
  readonly name: string;
  readonly played: Played;
  /** Every situation that is left, in the order of the tables. */
  readonly left: readonly string[];
}

/** One seek each, as the stream alone shows it after the presses have proved the map. */
export const streamCases: readonly Case[] = [
  {
    name: 'a sound seek',
    played: { axis: 'X', runs: [onX()] },
    left: ['healthy', 'mirrored', 'noise-trip', 'loses-steps', 'scale-off'],
  },
  {
    name: 'three sound seeks of a switch that is alone on its input and of known side',
    played: { axis: 'X', runs: three() },
    left: ['healthy', 'scale-off'],
  },
  {
    name: 'the direction setting, or one motor lead pair, reversed: away, and commanded the right way',
    played: { axis: 'X', runs: [onX({ sense: -1, plan: blind(-1, 60) })] },
    left: [
      'direction-inverted',
      'motor-coil-reversed',
      'motor-stutters',
      'motor-stands-still',
      'beyond-the-dog',
      'seek-too-short',
    ],
  },
  {
    name: 'the same, up to the switch at the far end',
    played: { axis: 'X', runs: [onX({ sense: -1, stands: 270, plan: blind(-1, 60) })] },
    left: ['direction-inverted', 'motor-coil-reversed'],
  },
  {
    name: 'the wrong end set: away, and commanded so',
    played: { axis: 'X', runs: [onX({ plan: blind(1, 60) })] },
    left: ['seeks-wrong-end', 'motor-stutters', 'motor-stands-still'],
  },
  {
    name: 'both set wrong: homing works',
    played: { axis: 'X', runs: [onX({ sense: -1, plan: home(1, 'x-home') })] },
    left: ['mirrored', 'noise-trip'],
  },
  {
    name: 'both set wrong, three times: the place says so',
    played: { axis: 'X', runs: three({ sense: -1, plan: home(1, 'x-home') }) },
    left: ['mirrored'],
  },
  {
    name: 'input plugs crossed and never pressed before',
    played: {
      axis: 'X',
      mapProved: false,
      runs: [onX({ plan: blind(-1, 30), switches: { ...dead, 'z-top': { actuates: 5, outwards: -1 } } })],
    },
    left: ['inputs-crossed', 'motors-crossed'],
  },
  {
    name: 'motor plugs crossed',
    played: {
      axis: 'X',
      runs: [onX({ plan: blind(-1, 30), switches: { ...dead, 'z-top': { actuates: 5, outwards: -1 } } })],
    },
    left: ['motors-crossed'],
  },
  {
    name: 'begins on its switch and comes off it',
    played: {
      axis: 'X',
      runs: [
        onX({
          stands: -2.2,
          plan: [
            rest,
            { activity: 'homing', by: 3, speed: 15 },
            { wait: 150 },
            ...home(-1, 'x-home').slice(1),
          ],
        }),
      ],
    },
    left: ['stands-on-switch'],
  },
  {
    name: 'begins with its input active and never sees it free',
    played: {
      axis: 'X',
      runs: [
        onX({
          switches: { ...xSwitches, 'x-home': { when: () => true } },
          plan: [rest, { activity: 'homing', by: 3, speed: 5 }, fault],
        }),
      ],
    },
    left: ['stands-on-switch', 'input-stuck'],
  },
  {
    name: 'a number set where it stood',
    played: {
      axis: 'X',
      runs: [
        onX({
          start: 17,
          plan: [rest, { activity: 'homing', wait: 50 }, { set: 0, activity: 'still' }, rest],
        }),
      ],
    },
    left: ['zeroed-in-place'],
  },
  {
    name: 'trips and does not turn',
    played: { axis: 'X', runs: [onX({ plan: [rest, toSwitch(), fault] })] },
    left: ['no-reversal'],
  },
  {
    name: 'goes on past its trip',
    played: { axis: 'X', runs: [onX({ plan: blind(-1, 40) })] },
    left: ['no-reversal'],
  },
  {
    name: 'turns back by command and its switch stays operated',
    played: { axis: 'X', runs: [onX({ plan: [rest, toSwitch(), { by: 0.4, speed: 15 }, fault] })] },
    left: ['does-not-turn-back', 'does-not-clear'],
  },
  {
    name: 'finds its switch once and not the second time',
    played: {
      axis: 'X',
      runs: [onX({ plan: [rest, toSwitch(), { by: 2, speed: 15 }, { by: -1, speed: 1 }, fault] })],
    },
    left: ['trip-lost-to-bounce', 'noise-trip'],
  },
  {
    name: 'turns and is zeroed without a trip in any report',
    played: {
      axis: 'X',
      runs: [
        onX({
          switches: dead,
          plan: [
            rest,
            { activity: 'homing', way: -1, speed: 15, most: 22 },
            { by: 2, speed: 15 },
            { set: 0, activity: 'still' },
            rest,
          ],
        }),
      ],
    },
    left: ['trip-between-reports'],
  },
  {
    name: 'trips wherever noise strikes',
    played: {
      axis: 'X',
      runs: [noisy(12, 1), noisy(17, 2, 12), noisy(7, 3, 17)],
    },
    left: ['noise-trip', 'loses-steps'],
  },
  {
    name: 'blocked by a limit of another axis',
    played: {
      axis: 'X',
      runs: [onX({ plan: [rest, still()], switches: { ...xSwitches, 'z-top': { when: () => true } } })],
    },
    left: ['blocked-elsewhere'],
  },
  {
    name: 'backs off into the switch at the other end',
    played: {
      axis: 'X',
      runs: [
        onX({
          switches: { ...xSwitches, 'x-far': { actuates: -0.5, frees: -0.8, outwards: 1 } },
          stands: -1,
          start: -1,
          plan: home(-1, 'x-home'),
        }),
      ],
    },
    left: ['backs-into-a-switch'],
  },
  {
    name: 'ends after the same way from unlike starts',
    played: {
      axis: 'X',
      runs: [
        onX({ stands: 200, plan: blind(-1, 50) }),
        onX({ stands: 150, start: -50, plan: blind(-1, 50), seed: 2 }),
      ],
    },
    left: [
      'direction-inverted',
      'motor-coil-reversed',
      'motor-stutters',
      'motor-stands-still',
      'beyond-the-dog',
      'seek-too-short',
    ],
  },
  {
    name: 'loses steps from homing to homing',
    played: { axis: 'X', runs: [onX(), ...[1, 2, 3].map((i) => again({ stands: 0.4, seed: i + 1 }))] },
    left: ['loses-steps'],
  },
  {
    name: 'crawls',
    played: { axis: 'X', runs: [onX({ stands: 1, plan: blind(-1, 2, 0.4) })] },
    left: [
      'direction-inverted',
      'motor-coil-reversed',
      'motor-stutters',
      'motor-stands-still',
      'beyond-the-dog',
      'seek-too-short',
      'crawls',
    ],
  },
  {
    name: 'homes while its position stands still in the stream',
    played: {
      axis: 'X',
      runs: [
        onX({
          start: 17,
          plan: [rest, { activity: 'homing', wait: 4000 }, { set: 0, activity: 'still' }, rest],
        }),
      ],
    },
    left: ['not-reported'],
  },
  {
    name: 'runs past what its switch may be driven',
    // 45 mm/s and 300 mm/s2: 3.4 mm past the trip, where 3 mm are allowed.
    played: { axis: 'X', runs: [onX({ plan: home(-1, 'x-home', { approach: 45, backOff: 6 }), period: 5 })] },
    left: ['mirrored', 'noise-trip', 'overruns'],
  },
  {
    name: 'was homed and then stopped in the middle of a move',
    played: { axis: 'X', runs: [onX()], more: { lostSince: true } },
    left: ['mirrored', 'noise-trip', 'reference-lost'],
  },
  {
    name: 'homes before Z is up',
    played: { axis: 'X', runs: [onX()], more: { orderWrong: true } },
    left: ['mirrored', 'noise-trip', 'wrong-order'],
  },
  {
    name: 'ends without a zero',
    played: { axis: 'X', runs: [onX({ plan: home(-1, 'x-home').filter((part) => part.set === undefined) })] },
    left: ['noise-trip', 'zero-not-set'],
  },
  {
    name: 'Z that homes to its top',
    played: {
      axis: 'Z',
      runs: [onZ(), onZ({ start: 0, stands: 0, seed: 2 }), onZ({ start: 0, stands: 0, seed: 3 })],
    },
    left: ['healthy', 'scale-off', 'sags-at-start'],
  },
  {
    name: 'Z that seeks downwards',
    played: { axis: 'Z', runs: [onZ({ plan: blind(-1, 15) })] },
    left: ['seeks-wrong-end', 'motor-stutters', 'motor-stands-still', 'seeks-the-work'],
  },
  {
    name: 'Z that goes down to touch the work',
    played: {
      axis: 'Z',
      runs: [
        onZ({
          plan: [
            rest,
            { activity: 'moving', way: -1, speed: 5, until: 'probe', most: 30 },
            { by: 2, speed: 5 },
            still(),
          ],
        }),
      ],
    },
    left: ['touches-the-work'],
  },
  {
    name: 'two motors, two switches, one after the other',
    played: {
      axis: 'Y',
      runs: [onY(), onY({ start: 0, stands: -0.5, seed: 2 }), onY({ start: 0, stands: -0.5, seed: 3 })],
    },
    left: ['healthy', 'scale-off', 'gantry-motors-fight', 'gantry-sides-crossed'],
  },
  {
    name: 'two motors, one switch never answers',
    played: {
      axis: 'Y',
      runs: [
        onY({
          plan: [rest, { activity: 'homing', way: -1, speed: 15, until: 'y-right', most: 22 }, fault],
          switches: { ...ySwitches(), 'y-right': { when: () => false } },
        }),
      ],
    },
    left: ['gantry-sides-crossed', 'gantry-switch-dead'],
  },
  {
    name: 'two motors, both inputs in the very same report, never pressed one by one',
    played: { axis: 'Y', mapProved: false, runs: [onY({ switches: ySwitches(0) })] },
    left: [
      'healthy',
      'mirrored',
      'noise-trip',
      'loses-steps',
      'scale-off',
      'gantry-motors-fight',
      'gantry-inputs-joined',
    ],
  },
  {
    name: 'a turning axis that meets its dog from either side',
    played: {
      axis: 'A',
      runs: [0, 12, 0, 12].map((side, i) => ({
        plan: home(1, 'a-dog', { value: 0 }).filter((part) => part.set === undefined),
        stands: -20,
        seed: i + 1,
        switches: { 'a-dog': { actuates: side, frees: side - 0.4, outwards: 1 } },
      })),
    },
    left: ['noise-trip', 'zero-not-set', 'rotary-either-side'],
  },
  {
    name: 'one input with a switch at either end',
    played: {
      axis: 'U',
      runs: [
        { plan: home(-1, 'u-ends'), stands: 20, switches: uSwitches },
        ...[2, 3].map((seed) => ({
          plan: home(-1, 'u-ends'),
          stands: 0,
          start: 0,
          seed,
          switches: uSwitches,
        })),
      ],
    },
    left: ['healthy', 'mirrored', 'homes-at-far-end', 'scale-off', 'overruns'],
  },
];
