import type { Network, Node, UnitPosition } from './network.ts';
import type { PinLimits } from './pin-limits.ts';
import { type Solution, solve } from './solve.ts';
import type { World } from './wiring.ts';

/** What an input makes of its pin. `shorted` and `cut` only a window input can tell. */
export type Level = 'conducting' | 'open' | 'uncertain' | 'floats' | 'shorted' | 'cut';

/** A logic pin's own leakage at most, A (ATmega328P and STM32F103 data sheets: 1 uA). */
const pinLeak = 1e-6;

/** The levels of pins in a network. `any` unit: only what holds for every unit is called conducting or open. */
export function levelsIn(
  network: Network,
  limits: PinLimits,
  unit: World['unit'],
  pins: readonly Node[] = ['pin'],
): readonly Level[] {
  const at = (end: UnitPosition | undefined) => {
    const solution = solve(network, end);
    return { solution, levels: pins.map((pin) => levelAt(solution, limits, unit, pin)) };
  };
  if (unit !== 'any') return at(unit).levels;
  const { solution, levels } = at(undefined);
  if (!solution.hangs) return levels;
  const [low, high] = [at(0).levels, at(1).levels];
  return levels.map((_, pin) => {
    const [one = 'uncertain', other = 'uncertain'] = [low[pin], high[pin]];
    return one === other ? one : 'uncertain';
  });
}

/** The same from a network already solved; whether a controlled output hangs is then the caller's to ask. */
export function levelAt(solution: Solution, limits: PinLimits, unit: World['unit'], pin: Node): Level {
  const volts = solution.voltsAt(pin);
  const ohms = solution.sourceOhms(pin);
  if (volts === undefined || ohms === undefined) return 'floats';
  const reach = pinLeak * ohms;
  const [least, most] = [Math.max(volts - reach, -0.7), Math.min(volts + reach, limits.ceiling)];
  if (limits.kind === 'window') return band(volts, limits.limits);
  const { low, high } = limits;
  if (least <= low && most >= high) return 'floats';
  const opposite = limits.lowMeans === 'conducting' ? 'open' : 'conducting';
  if (unit !== 'any') return volts <= low + unit * (high - low) ? limits.lowMeans : opposite;
  if (most <= low) return limits.lowMeans;
  return least >= high ? opposite : 'uncertain';
}

const bands = ['shorted', 'conducting', 'open', 'cut'] as const;
const band = (volts: number, limits: readonly number[]): Level =>
  bands[limits.filter((limit) => volts > limit).length] ?? 'cut';
