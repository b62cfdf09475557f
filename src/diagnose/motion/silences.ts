import { usualPeriod } from './jumps.ts';
import { silentFor, silentPeriods } from './limits.ts';
import type { AxisSample } from './track.ts';

/** No report for longer than this, ms: what happened meanwhile was not seen. `usual`: the middle time between two reports. */
export const longestQuiet = (usual: number): number => Math.max(silentFor, usual * silentPeriods);

/** Whether an axis was elsewhere after a silence than before it: it moved, or was set a new number, and no report shows which. */
export function movedUnseen(samples: readonly AxisSample[]): boolean {
  const most = longestQuiet(usualPeriod(samples));
  return samples.some((sample, i) => {
    const before = samples[i - 1];
    return (
      before !== undefined &&
      before.segment === sample.segment &&
      before.position !== sample.position &&
      sample.at - before.at > most
    );
  });
}
