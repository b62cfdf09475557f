/** How two yes-or-no answers fell together over all trials. */
export interface Table {
  readonly both: number;
  readonly asked: number;
  readonly answered: number;
  readonly trials: number;
}

/** Mutual information in bits, from the shares as counted (C. E. Shannon, 1948). */
export function mutualInformation({ both, asked, answered, trials }: Table): number {
  const cells = [
    [both, asked, answered],
    [asked - both, asked, trials - answered],
    [answered - both, trials - asked, answered],
    [trials - asked - answered + both, trials - asked, trials - answered],
  ] as const;
  return cells.reduce(
    (sum, [n, row, column]) =>
      n === 0 ? sum : sum + (n / trials) * Math.log2((n * trials) / (row * column)),
    0,
  );
}

/**
 * The chance that what answered by itself, as often as this did, would fall on the asked trials so often or more: the upper tail of
 * the hypergeometric distribution (R. A. Fisher's exact test, 1935).
 */
export function chanceOf({ both, asked, answered, trials }: Table): number {
  let sum = 0;
  for (let n = both; n <= Math.min(asked, answered); n++)
    sum += Math.exp(
      logChoose(asked, n) + logChoose(trials - asked, answered - n) - logChoose(trials, answered),
    );
  return Math.min(1, sum);
}

function logChoose(n: number, k: number): number {
  if (k < 0 || k > n) return -Infinity;
  let sum = 0;
  for (let i = 1; i <= k; i++) sum += Math.log((n - k + i) / i);
  return sum;
}
