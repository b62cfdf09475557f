import { studentQuantile } from './confidence.ts';
import { lagOneCorrelation, sampleFigures, total } from './sample.ts';

/** One value that does not belong to the rest. */
export interface Outlier {
  readonly index: number;
  readonly value: number;
  /** How many standard deviations from the mean, and how many are allowed. */
  readonly distance: number;
  readonly allowed: number;
}

/**
 * The one value furthest from the mean, where it is too far for chance at 5 % (F. Grubbs's two-sided test; NIST/SEMATECH e-Handbook, 1.3.5.17.1). Undefined of
 * fewer than seven values: the test is not to be used on so few.
 */
export function outlierOf(values: readonly number[], significance = 0.05): Outlier | undefined {
  const n = values.length;
  if (n < fewestForOutlier) return undefined;
  const { mean, s } = sampleFigures(values);
  if (s === 0) return undefined;
  const distances = values.map((value) => Math.abs(value - mean) / s);
  const distance = Math.max(...distances);
  const index = distances.indexOf(distance);
  const allowed = grubbsLimit(n, significance);
  return distance > allowed ? { index, value: values[index] ?? Number.NaN, distance, allowed } : undefined;
}

const fewestForOutlier = 7;

/** G = (n−1)/√n · √(t²/(n−2+t²)), t at significance/(2n) with n−2 degrees of freedom. */
export function grubbsLimit(n: number, significance: number): number {
  const t = studentQuantile(1 - significance / (2 * n), n - 2);
  return ((n - 1) / Math.sqrt(n)) * Math.sqrt(t ** 2 / (n - 2 + t ** 2));
}

/** A straight way that the values go from run to run. */
export interface Drift {
  /** Per run, in the unit of the values. */
  readonly slope: number;
  /** Slope over its own standard error, and the bound it exceeds. */
  readonly t: number;
  readonly allowed: number;
}

/**
 * Least-squares slope over the run number where it is not chance at 5 % (two-sided t test of a slope; NIST/SEMATECH e-Handbook, 4.4.4 and 1.3.3.25). Undefined of
 * fewer than five values.
 */
export function driftOf(values: readonly number[], significance = 0.05): Drift | undefined {
  const n = values.length;
  if (n < fewestForDrift) return undefined;
  const middle = (n - 1) / 2;
  const { mean } = sampleFigures(values);
  const spread = (n * (n ** 2 - 1)) / 12;
  const slope = total(values.map((value, i) => (i - middle) * (value - mean))) / spread;
  const rests = values.map((value, i) => value - mean - slope * (i - middle));
  const error = Math.sqrt(total(rests.map((each) => each ** 2)) / (n - 2) / spread);
  const allowed = studentQuantile(1 - significance / 2, n - 2);
  if (slope === 0) return undefined;
  const t = error === 0 ? Math.sign(slope) * Number.POSITIVE_INFINITY : slope / error;
  return Math.abs(t) > allowed ? { slope, t, allowed } : undefined;
}

const fewestForDrift = 5;

/**
 * Correlation of each value with the one before it, where it lies outside ±1.96/√n: values that do not depend on each other come to that once in
 * twenty (NIST/SEMATECH e-Handbook, 1.3.3.1). Undefined of fewer than five values.
 */
export function dependenceOf(values: readonly number[]): number | undefined {
  if (values.length < fewestForDrift) return undefined;
  const lagOne = lagOneCorrelation(values);
  return lagOne !== undefined && Math.abs(lagOne) > 1.96 / Math.sqrt(values.length) ? lagOne : undefined;
}
