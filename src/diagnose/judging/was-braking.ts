import { slowedTo } from '../limits.ts';
import type { SeekRun } from '../seek/run.ts';

/** Whether an axis came down in speed on the way from its trip to where it ended: then its controller did act, however late. */
export function wasBraking({ cycle, motion }: SeekRun): boolean {
  const { trip, approach } = cycle;
  if (!trip || !approach) return false;
  const after = motion.samples.slice(approach.from, approach.to + 1).filter(({ at }) => at >= trip.at.high);
  const third = Math.floor(after.length / 3);
  const [early, late] = [speedOver(after.slice(0, third + 1)), speedOver(after.slice(-third - 1))];
  return early !== undefined && late !== undefined && late < early * slowedTo;
}

function speedOver(samples: SeekRun['motion']['samples']): number | undefined {
  const [first, last] = [samples[0], samples.at(-1)];
  if (!first || !last || last.at <= first.at) return undefined;
  return Math.abs(last.position - first.position) / (last.at - first.at);
}
