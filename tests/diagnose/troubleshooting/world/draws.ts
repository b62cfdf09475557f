import { type Random, seeded } from '../../../../src/diagnose/circuit/random.ts';

/** A source of chance of its own for everything that has a name: what is drawn first changes nothing that is drawn later. */
export function chanceFor(seed: number, ...names: readonly string[]): Random {
  let mixed = seed | 0;
  for (const letter of names.join('/')) mixed = Math.imul(mixed ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  const random = seeded(mixed);
  random();
  return random;
}

export const evenly = (random: Random, low: number, high: number): number => low + random() * (high - low);

/** Every decade as likely as another. */
export const byDecades = (random: Random, low: number, high: number): number =>
  low * (high / low) ** random();

export const happens = (random: Random, share: number): boolean => random() < share;

export function oneOf<Of>(random: Random, among: readonly Of[]): Of {
  const found = among[Math.floor(random() * among.length)];
  if (found === undefined) throw new RangeError('Nothing to draw from.');
  return found;
}

export function byWeight<Of>(random: Random, among: readonly Of[], weightOf: (each: Of) => number): Of {
  let left = random() * among.reduce((sum, each) => sum + weightOf(each), 0);
  for (const each of among) {
    left -= weightOf(each);
    if (left < 0) return each;
  }
  return oneOf(random, among);
}
