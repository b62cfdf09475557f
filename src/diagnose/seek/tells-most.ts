import type { Feature } from './features.ts';
import type { SeekJudgement } from './judge.ts';

/** Features by how many pairs of what is left they tell apart. */
export function tellsMost({ candidates, own }: SeekJudgement): readonly Feature[] {
  return candidates.separators
    .map(({ feature, pairs }) => ({
      feature,
      tells: pairs.filter(([a, b]) => own.includes(a) && own.includes(b)).length,
    }))
    .filter(({ tells }) => tells > 0)
    .sort((a, b) => b.tells - a.tells)
    .map(({ feature }) => feature);
}
