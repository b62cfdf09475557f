/** What a row of numbers comes to. */
export interface SampleFigures {
  readonly n: number;
  readonly mean: number;
  /** With n − 1; 0 of a single value. */
  readonly s: number;
  readonly least: number;
  readonly most: number;
  readonly range: number;
}

/**
 * Mean, standard deviation and range, in two passes with the rounding carried along (T. Chan, G. Golub, R. LeVeque, "Algorithms for computing the
 * sample variance", American Statistician 37 (1983) 242): the one-pass formula loses everything on numbers like machine coordinates.
 * Throws a RangeError of nothing and of what is not finite.
 */
export function sampleFigures(values: readonly number[]): SampleFigures {
  if (values.length === 0 || !values.every(Number.isFinite))
    throw new RangeError(`Figures need finite numbers, one at least; got ${values.length}.`);
  const n = values.length;
  const [first = 0] = values;
  // Off the first value, so that sums of large coordinates keep their last digits.
  const offsets = values.map((value) => value - first);
  const meanOffset = total(offsets) / n;
  const deviations = offsets.map((offset) => offset - meanOffset);
  const squares = total(deviations.map((each) => each ** 2)) - total(deviations) ** 2 / n;
  const least = values.reduce((low, value) => Math.min(low, value), Infinity);
  const most = values.reduce((high, value) => Math.max(high, value), -Infinity);
  return {
    n,
    mean: first + meanOffset,
    s: n > 1 ? Math.sqrt(Math.max(0, squares) / (n - 1)) : 0,
    least,
    most,
    range: most - least,
  };
}

/**
 * Correlation of each value with the next, Σ(xᵢ−x̄)(xᵢ₊₁−x̄)/Σ(xᵢ−x̄)² (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.12); undefined
 * where nothing varies.
 */
export function lagOneCorrelation(values: readonly number[]): number | undefined {
  const { mean } = sampleFigures(values);
  const deviations = values.map((value) => value - mean);
  const squares = total(deviations.map((each) => each ** 2));
  if (squares === 0) return undefined;
  return total(deviations.slice(1).map((each, i) => each * (deviations[i] ?? 0))) / squares;
}

/** A sum with its rounding errors carried along (A. Neumaier, ZAMM 54 (1974) 39). */
export function total(values: readonly number[]): number {
  let sum = 0;
  let lost = 0;
  for (const value of values) {
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + lost;
}
