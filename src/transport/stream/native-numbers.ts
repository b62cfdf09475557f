/**
 * Numbers as the native sentences spell them: plain decimal digits, as many as the line holds, nothing a language's own number reader
 * would also take (signs, exponents, hex, spaces, NaN). Every reader answers undefined for anything else.
 */

/** A whole number from 0 to `max`. */
export function count(text: string, max: number): number | undefined {
  if (!/^\d+$/.test(text)) return undefined;
  const value = Number(text);
  return value <= max ? value : undefined;
}

/** A decimal number, however many digits it is written with; no machine is longer than ten kilometres. */
export function decimal(text: string): number | undefined {
  if (!/^-?\d+(?:\.\d+)?$/.test(text)) return undefined;
  // Adding zero turns -0 into 0: a machine at "-0.000" stands at 0.
  const value = Number(text) + 0;
  return Math.abs(value) < 1e7 ? value : undefined;
}

/** A whole number of millivolts, at most a million either way. */
export const millivolts = (text: string): number | undefined =>
  /^-?\d{1,7}$/.test(text) && Math.abs(Number(text)) <= 1_000_000 ? Number(text) + 0 : undefined;

export const maxSequence = 65_535;
/** Both clocks are counted in 32 bits. */
export const maxClock = 2 ** 32 - 1;
