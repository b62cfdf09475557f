import type { Mm } from '../../model/units.ts';
import { fastestEver, fiercest, overRapid, resetSteps } from './limits.ts';
import type { AxisSample } from './track.ts';

/** A position that was set, not travelled: a new zero, a restart, another frame. */
export interface Jump {
  /** Index of the last sample before it. */
  readonly before: number;
  /** What the frame shifted by, mm: the new number less the old one. */
  readonly by: Mm;
}

/** What an axis can do, as far as the machine file tells. */
export interface Abilities {
  /** One position step, mm. */
  readonly step: Mm;
  /** mm/min. */
  readonly rapid?: number | undefined;
  /** mm/s². */
  readonly acceleration?: number | undefined;
}

/** The speed, mm/s, above which a change of position cannot have been travelled. `rapid` mm/min. */
export const impossibleSpeed = (rapid: number | undefined): number =>
  rapid === undefined ? fastestEver : (rapid / 60) * overRapid;

/**
 * Where the reported position leapt further than the axis can travel between two reports, and where a new segment began. From
 * rest to rest it cannot travel further than a·T²/4 in the time T: half of it speeding up, half slowing down.
 */
export function jumpsIn(samples: readonly AxisSample[], abilities: Abilities): readonly Jump[] {
  const usual = usualPeriod(samples);
  return samples.flatMap((sample, i) => {
    const before = samples[i - 1];
    if (!before) return [];
    const by = (sample.position - before.position) as Mm;
    if (before.segment !== sample.segment) return [{ before: i - 1, by }];
    // Two reports may be stamped closer together than they were taken; a usual period is granted to each.
    const seconds = Math.max(sample.at - before.at, usual) / 1000;
    return Math.abs(by) > farthest(samples, i, seconds, abilities) ? [{ before: i - 1, by }] : [];
  });
}

function farthest(
  samples: readonly AxisSample[],
  i: number,
  seconds: number,
  { step, rapid, acceleration }: Abilities,
): number {
  const travelled = impossibleSpeed(rapid) * seconds;
  const stood = (a: number, b: number) =>
    Math.abs((samples[a]?.position ?? Infinity) - (samples[b]?.position ?? -Infinity)) <= step * 1.001;
  if (!stood(i - 3, i - 1) || !stood(i - 2, i - 1) || !stood(i, i + 1) || !stood(i, i + 2)) return travelled;
  const restToRest = (fiercest(acceleration) * seconds ** 2) / 4;
  return Math.min(travelled, Math.max(restToRest, step * resetSteps));
}

/** The middle time between two reports, ms; 0 of fewer than two. */
export function usualPeriod(samples: readonly AxisSample[]): number {
  const periods = samples.slice(1).map((sample, i) => sample.at - (samples[i]?.at ?? sample.at));
  const sorted = periods.filter((period) => period > 0).sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}

/** The samples in pieces, each within one frame. */
export function pieces<Sample>(samples: readonly Sample[], jumps: readonly Jump[]): readonly Piece<Sample>[] {
  const starts = [0, ...jumps.map(({ before }) => before + 1)];
  return starts.flatMap((from, i) => {
    const part = samples.slice(from, starts[i + 1] ?? samples.length);
    return part.length > 0 ? [{ from, samples: part }] : [];
  });
}

export interface Piece<Sample> {
  /** Index of its first sample in the whole track. */
  readonly from: number;
  readonly samples: readonly Sample[];
}
