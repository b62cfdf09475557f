import jstat from 'jstat';
import type { Interval } from '../motion/interval.ts';

const { chisquare } = jstat.jStat;

/**
 * Where the true mean of a count lies with 95 % confidence, given that n were counted: ½·χ²(0.025; 2n) and ½·χ²(0.975; 2n+2)
 * (F. Garwood, Biometrika 28 (1936) 437). Of none counted the lower end is 0. Throws a RangeError where n is no count.
 */
export const meanCountInterval = (n: number): Interval => ({
  low: whole(n) === 0 ? 0 : chisquare.inv(0.025, 2 * n) / 2,
  high: chisquare.inv(0.975, 2 * n + 2) / 2,
});

/** The one-sided 95 % bound, ½·χ²(0.95; 2n+2): of none counted −ln 0.05, the rule of three (Eypasch et al., BMJ 311 (1995) 619). */
export const meanCountAtMost95 = (n: number): number =>
  whole(n) === 0 ? -Math.log(0.05) : chisquare.inv(0.95, 2 * n + 2) / 2;

function whole(n: number): number {
  if (!Number.isInteger(n) || n < 0) throw new RangeError(`${n} is no count.`);
  return n;
}
