import type { PlanPart, Setup } from '../../../../scripts/simulated-seek.mjs';
import { home, onX, type Played, xSwitches } from '../played.ts';

export interface Case {
  readonly name: string;
  readonly played: Played;
  /** Every situation that is left, in the order of the tables. */
  readonly left: readonly string[];
}

export const rest: PlanPart = { wait: 500 };
export const still = (wait = 500): PlanPart => ({ activity: 'still', wait });
export const fault: PlanPart = { activity: 'fault', wait: 500 };
/** A run that ends by itself, without a trip. */
export const blind = (way: 1 | -1, most: number, speed = 15): readonly PlanPart[] => [
  rest,
  { activity: 'homing', way, speed, most },
  still(),
];
export const toSwitch = (input = 'x-home'): PlanPart => ({
  activity: 'homing',
  way: -1,
  speed: 15,
  until: input,
  most: 60,
});
export const dead = { ...xSwitches, 'x-home': { when: () => false } };
/** Home again from where the last homing left it, or from 40 mm out. */
export const again = (setup: Partial<Setup> = {}): Setup => onX({ start: 0, stands: 0, ...setup });
export const three = (setup: Partial<Setup> = {}): readonly Setup[] => [
  onX(setup),
  again({ ...setup, seed: 2 }),
  again({ ...setup, seed: 3 }),
];

/** From 40 mm out, tripping `at` mm before home; the homing before it tripped at `before` and set its zero 2 mm inside. */
export const noisy = (at: number, seed: number, before?: number): Setup =>
  onX({
    seed,
    stands: 40,
    start: before === undefined ? 0 : 40 - (before + 2),
    switches: { ...xSwitches, 'x-home': { actuates: at, frees: at + 0.4, outwards: -1 } },
  });

export const zSwitches = {
  'z-top': { actuates: 2, frees: 1.6, outwards: 1 },
  probe: { actuates: -40, outwards: -1 },
} as const;
export const onZ = (setup: Partial<Setup> = {}): Setup => ({
  plan: home(1, 'z-top'),
  stands: -20,
  switches: zSwitches,
  ...setup,
});
export const ySwitches = (offset = 0.5) =>
  ({
    'y-left': { actuates: -2, frees: -1.6, outwards: -1 },
    'y-right': { actuates: -2 - offset, frees: -1.6 - offset, outwards: -1 },
  }) as const;
export const onY = (setup: Partial<Setup> = {}): Setup => ({
  plan: home(-1, 'y-right'),
  stands: 20,
  switches: ySwitches(),
  ...setup,
});
export const uSwitches = {
  'u-ends': { when: ({ physical }: { physical: number }) => physical <= -2 || physical >= 102 },
};
