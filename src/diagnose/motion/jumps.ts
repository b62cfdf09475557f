import type { Mm } from '../../model/units.ts';
import { fastestEver, fiercest, lateReports, overRapid, resetSteps } from './limits.ts';
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
 * Where the reported position leapt further than the axis can travel between two reports, and where a new segment began: further than its
 * fastest speed allows, or than the speeds just before and after allow with all the acceleration there is in between.
 */
export function jumpsIn(samples: readonly AxisSample[], abilities: Abilities): readonly Jump[] {
  const usual = usualPeriod(samples) / 1000;
  // Two reports may be stamped closer together than they were taken; a usual period is granted to each.
  const seconds = (i: number) => Math.max(((samples[i]?.at ?? 0) - (samples[i - 1]?.at ?? 0)) / 1000, usual);
  const speeds = samples.map(
    (sample, i) => Math.abs(sample.position - (samples[i - 1]?.position ?? Number.NaN)) / seconds(i),
  );
  const jumps: Jump[] = [];
  for (const [i, sample] of samples.entries()) {
    const before = samples[i - 1];
    if (!before) continue;
    const by = (sample.position - before.position) as Mm;
    const isFar = Math.abs(by) > farthest(fastestAround(speeds, i), seconds(i), abilities);
    if (before.segment !== sample.segment || isFar) jumps.push({ before: i - 1, by });
  }
  return jumps;
}

const around = [-2, -1, 1, 2] as const;

/** The fastest of the two spans before and the two after; undefined where one of them is not known. */
function fastestAround(speeds: readonly number[], at: number): number | undefined {
  let fastest = 0;
  for (const off of around) {
    const speed = speeds[at + off];
    if (speed === undefined || !Number.isFinite(speed)) return undefined;
    fastest = Math.max(fastest, speed);
  }
  return fastest;
}

function farthest(
  fastest: number | undefined,
  seconds: number,
  { step, rapid, acceleration }: Abilities,
): number {
  const travelled = impossibleSpeed(rapid) * seconds;
  if (fastest === undefined) return travelled;
  const gone = fastest * lateReports * seconds;
  return Math.min(travelled, gone + (fiercest(acceleration) * seconds ** 2) / 4 + step * resetSteps);
}

/** The middle time between two reports, ms; 0 of fewer than two. */
export function usualPeriod(samples: readonly AxisSample[]): number {
  const periods = samples.map((sample, i) => sample.at - (samples[i - 1]?.at ?? sample.at));
  const sorted = Float64Array.from(periods.filter((period) => period > 0)).sort();
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
