import type { Mm } from '../../model/units.ts';
import { type Abilities, jumpsIn, pieces } from './jumps.ts';
import { reversalSteps, slowestApproach, stillFor, stillReports } from './limits.ts';
import type { AxisSample } from './track.ts';

export type Direction = 1 | -1;

/** A stretch in which an axis stood, or went one way. Neighbours share the sample at which one became the other. */
export type Run = Still | Moving;

interface Stretch {
  /** Indexes into the track, both included. */
  readonly from: number;
  readonly to: number;
}
export interface Still extends Stretch {
  readonly kind: 'still';
}
export interface Moving extends Stretch {
  readonly kind: 'moving';
  readonly direction: Direction;
}

/**
 * A track cut into rest and one-way motion. Rest is two neighbouring position steps held for 100 ms and three reports at least; a turn
 * counts from two steps on, so that the flicker of a rounded number is neither. Nothing spans a jump of the frame.
 */
export function runsOf(samples: readonly AxisSample[], abilities: Abilities): readonly Run[] {
  return pieces(samples, jumpsIn(samples, abilities)).flatMap(({ from, samples: piece }) =>
    runsOfPiece(piece, abilities.step).map((run) => ({ ...run, from: run.from + from, to: run.to + from })),
  );
}

function runsOfPiece(samples: readonly AxisSample[], step: Mm): readonly Run[] {
  const stills = stillStretches(samples, step * 1.001);
  const runs: Run[] = [];
  let from = 0;
  for (const still of stills) {
    runs.push(...movesBetween(samples, from, still.from, step));
    runs.push({ kind: 'still', ...still });
    from = still.to;
  }
  return [...runs, ...movesBetween(samples, from, samples.length - 1, step)];
}

function stillStretches(samples: readonly AxisSample[], band: number): readonly Stretch[] {
  const least = Math.max(stillFor, (band / slowestApproach) * 1000);
  const found: Stretch[] = [];
  let i = 0;
  while (i < samples.length) {
    const to = endOfBand(samples, i, band);
    const lasted = (samples[to]?.at ?? 0) - (samples[i]?.at ?? 0);
    if (to - i + 1 >= stillReports && lasted >= least) {
      const last = found.at(-1);
      // The end of a ramp and a flicker beside it are one rest.
      const joins = last && last.to + 1 >= i && endOfBand(samples, last.from, band * 2) >= to;
      if (joins) found[found.length - 1] = { from: last.from, to };
      else found.push({ from: i, to });
      i = to;
    }
    i++;
  }
  return found;
}

/** The last sample up to which all lie within one band. */
function endOfBand(samples: readonly AxisSample[], from: number, band: number): number {
  let low = Infinity;
  let high = -Infinity;
  let i = from;
  for (; i < samples.length; i++) {
    const position = samples[i]?.position ?? Number.NaN;
    low = Math.min(low, position);
    high = Math.max(high, position);
    if (high - low > band) break;
  }
  return i - 1;
}

/** One-way stretches between two samples: a turn is where the axis has come back by more than a rounded number flickers. */
function movesBetween(samples: readonly AxisSample[], from: number, to: number, step: Mm): readonly Moving[] {
  const least = step * reversalSteps * 0.999;
  const at = (i: number): number => samples[i]?.position ?? Number.NaN;
  const moves: Moving[] = [];
  let start = from;
  let farthest = from;
  let direction: Direction | undefined;
  for (let i = from + 1; i <= to; i++) {
    if (direction === undefined) {
      if (Math.abs(at(i) - at(start)) < least) continue;
      direction = at(i) > at(start) ? 1 : -1;
      farthest = i;
    } else if ((at(i) - at(farthest)) * direction >= 0) farthest = i;
    else if ((at(farthest) - at(i)) * direction >= least) {
      moves.push({ kind: 'moving', direction, from: start, to: farthest });
      start = farthest;
      direction = direction === 1 ? -1 : 1;
      farthest = i;
    }
  }
  if (direction !== undefined) moves.push({ kind: 'moving', direction, from: start, to });
  return moves;
}
