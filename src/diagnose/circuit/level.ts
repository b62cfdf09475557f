import type { Network, Node, UnitPosition } from './network.ts';
import type { PinLimits } from './pin-limits.ts';
import { type Solution, solve } from './solve.ts';
import type { World } from './wiring.ts';

/** What an input makes of its pin. `shorted` and `cut` only a window input can tell. */
export type Level = 'conducting' | 'open' | 'uncertain' | 'floats' | 'shorted' | 'cut';

/** A logic pin's own leakage at most, A, in or out (ATmega328P and STM32F103 data sheets: 1 uA). */
const pinLeak = 1e-6;
/** V; where the leakage moves the pin by less, its source resistance tells how far well enough. */
const littleReach = 0.1;
/** V a pin can be pulled below ground: its clamp holds it there. */
const floor = -0.7;

/** The levels of pins in a network. `any` unit: only what holds for every unit is called conducting or open. */
export function levelsIn(
  network: Network,
  limits: PinLimits,
  unit: World['unit'],
  pins: readonly Node[] = ['pin'],
): readonly Level[] {
  const at = (end: UnitPosition | undefined) => {
    const solution = solve(network, end);
    const levels = pins.map((pin) => {
      const reach = reachOf(network, solution, pin, end);
      return reach === undefined ? 'floats' : levelWithin(reach, limits, unit);
    });
    return { hangs: solution.hangs, levels };
  };
  if (unit !== 'any') return at(unit).levels;
  const { hangs, levels } = at(undefined);
  if (!hangs) return levels;
  const [low, high] = [at(0).levels, at(1).levels];
  return levels.map((_, pin) => {
    const [one = 'uncertain', other = 'uncertain'] = [low[pin], high[pin]];
    return one === other ? one : 'uncertain';
  });
}

interface Reach {
  readonly least: number;
  readonly volts: number;
  readonly most: number;
}

/** Where the pin's own leakage can take it; undefined where nothing holds the pin at all. */
function reachOf(
  network: Network,
  solution: Solution,
  pin: Node,
  unit: UnitPosition | undefined,
): Reach | undefined {
  const [volts, ohms] = [solution.voltsAt(pin), solution.sourceOhms(pin)];
  if (volts === undefined || ohms === undefined) return undefined;
  const by = pinLeak * ohms;
  if (by <= littleReach) return { least: volts - by, volts, most: volts + by };
  const leaking = (amps: number) =>
    solve([...network, { kind: 'current', name: 'pin leak', from: '0 V', to: pin, amps }], unit).voltsAt(
      pin,
    ) ?? volts;
  return { least: leaking(-pinLeak), volts, most: leaking(pinLeak) };
}

function levelWithin({ least, volts, most }: Reach, limits: PinLimits, unit: World['unit']): Level {
  if (limits.kind === 'window') return band(volts, limits.limits);
  const { low, high, lowMeans, ceiling } = limits;
  if (Math.max(least, floor) <= low && Math.min(most, ceiling) >= high) return 'floats';
  const highMeans = lowMeans === 'conducting' ? 'open' : 'conducting';
  if (unit !== 'any') return volts <= low + unit * (high - low) ? lowMeans : highMeans;
  if (most <= low) return lowMeans;
  return least >= high ? highMeans : 'uncertain';
}

const bands = ['shorted', 'conducting', 'open', 'cut'] as const;
const band = (volts: number, limits: readonly number[]): Level =>
  bands[limits.filter((limit) => volts > limit).length] ?? 'cut';
