import jstat from 'jstat';
import type { Interval } from '../motion/interval.ts';

const { chisquare, studentt, gammaln } = jstat.jStat;

/**
 * Where the true standard deviation lies, given s of n values from a normal population: s·√((n−1)/χ²) at both tails (NIST/SEMATECH e-Handbook of
 * Statistical Methods, 7.2.3.1). `confidence` between 0 and 1. Throws a RangeError under two values.
 */
export function deviationInterval(s: number, n: number, confidence = 0.95): Interval {
  const dof = degrees(n, confidence);
  const tail = (1 - confidence) / 2;
  const at = (p: number) => s * Math.sqrt(dof / chisquare.inv(p, dof));
  return { low: at(1 - tail), high: at(tail) };
}

/** Where the true mean lies: x̄ ± t·s/√n (NIST/SEMATECH e-Handbook, 1.3.5.2). */
export function meanInterval(mean: number, s: number, n: number, confidence = 0.95): Interval {
  const dof = degrees(n, confidence);
  const half = (studentt.inv(1 - (1 - confidence) / 2, dof) * s) / Math.sqrt(n);
  return { low: mean - half, high: mean + half };
}

/** Quantile of χ² and of Student's t, for those who need the number itself. */
export const chiSquareQuantile = (p: number, dof: number): number => chisquare.inv(p, dof);
export const studentQuantile = (p: number, dof: number): number => studentt.inv(p, dof);

/** c₄ = √(2/(n−1))·Γ(n/2)/Γ((n−1)/2): s of n normal values falls short of the true deviation by this factor on average. */
export const c4 = (n: number): number =>
  Math.sqrt(2 / (n - 1)) * Math.exp(gammaln(n / 2) - gammaln((n - 1) / 2));

function degrees(n: number, confidence: number): number {
  if (!Number.isInteger(n) || n < 2 || !(confidence > 0 && confidence < 1))
    throw new RangeError(`No interval follows from ${n} values at ${confidence}.`);
  return n - 1;
}
