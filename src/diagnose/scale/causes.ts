import type { ScaleCause } from '../../model/scale-facts.ts';

export type { ScaleCause } from '../../model/scale-facts.ts';

export interface LikelyCause {
  readonly cause: ScaleCause;
  /** What the cause alone would make of every length. */
  readonly ratio: number;
  /** How far the ratio found is from it, as a share. */
  readonly apart: number;
}

/** How near a ratio must come to a cause's own, as a share (common practice, no source). */
export const nearEnough = 0.003;

const microsteps = [1, 2, 4, 5, 8, 10, 16, 20, 25, 32, 40, 64];
const leads = [1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20];
const inchPitches = [
  { metric: 5, inch: 5.08 },
  { metric: 2, inch: 2.032 },
  { metric: 2.5, inch: 2.54 },
];
const teeth = { fewest: 10, most: 40 };

/**
 * What may make every length `ratio` times the commanded one, likeliest first: a named mistake before a bare fraction, small numbers before large ones. `within`: how well the
 * ratio is known, as a share. Nothing fits: the screw, belt or rack is a little off, or the measurement is.
 */
export function scaleCauses(ratio: number, within: number = nearEnough): readonly LikelyCause[] {
  if (!(ratio > 0) || !Number.isFinite(ratio)) throw new RangeError(`A scale is above zero, not ${ratio}.`);
  const found = [...named(), ...fractions()]
    .map(({ cause, ratio: own }) => ({ cause, ratio: own, apart: Math.abs(ratio / own - 1) }))
    .filter(({ ratio: own, apart }) => apart <= within && own !== 1);
  const seen = new Set<string>();
  return found.filter(({ cause, ratio: own }) => {
    // One microstep pair stands for all that give the same ratio.
    const name = `${cause.kind} ${own.toPrecision(9)}`;
    return !seen.has(name) && seen.add(name);
  });
}

interface Candidate {
  readonly cause: ScaleCause;
  readonly ratio: number;
}

function named(): readonly Candidate[] {
  return [
    { cause: { kind: 'inch-for-mm' }, ratio: 25.4 },
    { cause: { kind: 'inch-for-mm' }, ratio: 1 / 25.4 },
    // The real step is larger than the one set: fewer microsteps a full step than the controller counts on.
    ...pairs(microsteps).map(([set, real]) => ({
      cause: { kind: 'microsteps', set, real } as const,
      ratio: set / real,
    })),
    { cause: { kind: 'step-angle' }, ratio: 2 },
    { cause: { kind: 'step-angle' }, ratio: 0.5 },
    { cause: { kind: 'diameter-for-radius' }, ratio: 2 },
    { cause: { kind: 'diameter-for-radius' }, ratio: 0.5 },
    ...[2, 4, 8].map((starts) => ({ cause: { kind: 'screw-starts', starts } as const, ratio: starts })),
    ...pairs(leads).map(([set, real]) => ({
      cause: { kind: 'lead', set, real } as const,
      ratio: real / set,
    })),
    ...inchPitches.flatMap(({ metric, inch }) => [
      { cause: { kind: 'inch-pitch', set: metric, real: inch } as const, ratio: inch / metric },
      { cause: { kind: 'inch-pitch', set: inch, real: metric } as const, ratio: metric / inch },
    ]),
    { cause: { kind: 'forgotten-pi' }, ratio: Math.PI },
    { cause: { kind: 'forgotten-pi' }, ratio: 1 / Math.PI },
    // A rack or belt of pitch π taken for 3, and the other way round.
    { cause: { kind: 'forgotten-pi' }, ratio: Math.PI / 3 },
    { cause: { kind: 'forgotten-pi' }, ratio: 3 / Math.PI },
  ];
}

/** Small whole numbers over each other: pulleys by their teeth, then gears. */
function fractions(): readonly Candidate[] {
  const wheel = Array.from({ length: teeth.most - teeth.fewest + 1 }, (_, i) => teeth.fewest + i);
  const small = Array.from({ length: 9 }, (_, i) => i + 1);
  const bySize = (a: readonly [number, number], b: readonly [number, number]) => a[0] + a[1] - b[0] - b[1];
  return [
    ...[...pairs(wheel)].sort(bySize).map(([set, real]) => ({
      cause: { kind: 'teeth', set, real } as const,
      ratio: real / set,
    })),
    ...[...pairs(small)].sort(bySize).map(([denominator, numerator]) => ({
      cause: { kind: 'gear', numerator, denominator } as const,
      ratio: numerator / denominator,
    })),
  ];
}

const pairs = (list: readonly number[]): readonly (readonly [number, number])[] =>
  list.flatMap((a) => list.flatMap((b) => (a === b ? [] : [[a, b] as const])));
