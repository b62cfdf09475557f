import { type Mm, mm } from '../../model/units.ts';
import type { AxisSample } from './track.ts';

/** Finer than any position is reported; also what binary fractions leave of a printed number. */
const finest = 1e-4;
const looksAt = 400;

/**
 * The grid that reported positions stand on, mm: the greatest length that goes into every change a whole number of times
 * (Euclid's algorithm on lengths known to a tenth of a micrometre). Undefined where nothing moved. An axis that only ever moved by
 * many grid steps at once may show a multiple of its grid.
 */
export function positionQuantum(samples: readonly AxisSample[]): Mm | undefined {
  let grid = 0;
  for (const [i, sample] of samples.slice(0, looksAt).entries()) {
    const before = samples[i - 1];
    if (!before || before.segment !== sample.segment) continue;
    grid = commonMeasure(grid, Math.abs(sample.position - before.position));
  }
  return grid > finest ? mm(Number(grid.toPrecision(6))) : undefined;
}

function commonMeasure(a: number, b: number): number {
  let [larger, smaller] = a > b ? [a, b] : [b, a];
  while (smaller > finest) {
    const rest = larger % smaller;
    // A rest of nearly a whole step is none: the division fell just short of it.
    [larger, smaller] = [smaller, smaller - rest < finest ? 0 : rest];
  }
  return larger;
}

/** One position step, mm: as the machine file tells it, but not finer than the stream prints positions; a coarse guess where neither says. */
export function positionStep(samples: readonly AxisSample[], declared: Mm | undefined): Mm {
  const seen = positionQuantum(samples);
  if (declared === undefined) return seen ?? unknownStep;
  return seen !== undefined && changesIn(samples) >= enoughChanges ? mm(Math.max(declared, seen)) : declared;
}

/** Few changes share a coarser grid by chance. */
const enoughChanges = 8;

const changesIn = (samples: readonly AxisSample[]): number =>
  samples.filter((each, i) => each.position !== samples[Math.max(0, i - 1)]?.position).length;

/** Common practice, no source: a coarse belt-driven step; only used where neither file nor stream tells. */
const unknownStep = mm(0.05);
