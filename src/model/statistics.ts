import { type Share, share } from './units.ts';

/**
 * The largest share of presses that could go unseen and still, with 5 % luck, leave n of n seen: 1 − 0.05^(1/n), the exact
 * one-sided binomial bound (the "rule of three" in its exact form; Eypasch et al., BMJ 311 (1995) 619).
 */
export function missShareAtMost95(presses: number): Share {
  if (!Number.isInteger(presses) || presses < 1)
    throw new RangeError(`Presses counted: ${presses}; a bound needs at least one.`);
  return share(1 - 0.05 ** (1 / presses));
}

/** The middle value, or the mean of the two middle ones; undefined of nothing. */
export function median(values: readonly number[]): number | undefined {
  if (values.length === 0) return undefined;
  const sorted = Float64Array.from(values).sort();
  const upper = sorted[Math.floor(sorted.length / 2)] ?? 0;
  if (sorted.length % 2 === 1) return upper;
  return ((sorted[sorted.length / 2 - 1] ?? 0) + upper) / 2;
}
