import { type Part, partOf } from '../../model/stream-description.ts';
import type { Column } from './series.ts';

/** A name with more different texts than this counts something; it shows no switch. */
const mostTexts = 256;
const mostCharacters = 64;
const mostBits = 48;
/** A text that came more rarely is damage. */
export const rare = 0.002;

/** Everything that may be looked at in a name, each with what it reads from every text; only what varies. */
export function partsIn(
  field: string,
  { at, texts, counts }: Column,
): readonly { readonly part: Part; readonly symbols: readonly (string | undefined)[] }[] {
  const isCommon = texts.map((_, i) => (counts[i] ?? 0) > Math.max(1, at.length * rare));
  const common = texts.filter((_, i) => isCommon[i]);
  if (common.length < 2 && !field.endsWith('.*')) return [];
  if (common.length > mostTexts || texts.length > mostTexts * 8) return [];
  const often = new Map(texts.map((text, i) => [text, counts[i] ?? 0]));
  return [...partsFor(field, common, often)].flatMap((part) => {
    const symbols = texts.map((text) => partOf(text, part));
    const seen = new Set(symbols.filter((_, i) => isCommon[i]));
    return seen.size > 1 ? [{ part, symbols }] : [];
  });
}

/** `often`: how many times each text came; what came oftener says more about the form than a great many words that each came once. */
function* partsFor(
  field: string,
  texts: readonly string[],
  often: ReadonlyMap<string, number>,
): Generator<Part> {
  if (field.endsWith('.*')) {
    const words = new Set(texts.flatMap((text) => text.split(' ')).filter((word) => word !== ''));
    for (const word of words) yield { kind: 'word', word };
    // Letters stand by themselves, or run together to what is no word of its own.
    const letters = new Set([...words].join(''));
    if ([...words].some((word) => word.length === 1) && letters.size <= 32)
      for (const letter of letters) if (letter >= 'A') yield { kind: 'letter', letter };
    return;
  }
  if (texts.length <= 24) yield { kind: 'whole' };
  const times = (some: readonly string[]) => some.reduce((sum, text) => sum + (often.get(text) ?? 0), 0);
  const all = times(texts);
  const usual = mostCommonLength(texts, often);
  if (usual > 1 && usual <= mostCharacters && times(texts.filter((text) => text.length === usual)) > all / 2)
    for (let index = 0; index < usual; index++) yield { kind: 'character', index, length: usual };
  const figures = texts.filter((text) => /^(?:0[bx])?[0-9a-f]{1,40}$/i.test(text));
  const length = figures.reduce((most, text) => Math.max(most, text.length), 0);
  if (times(figures) < all / 2 || length > mostBits) return;
  for (const base of [2, 10, 16] as const) {
    const readable = figures.filter((text) => partOf(text, { kind: 'bit', base, bit: 0 }) !== undefined);
    if (readable.length < figures.length * 0.9) continue;
    for (let bit = 0; bit < bitsOf(readable, base); bit++) yield { kind: 'bit', base, bit };
  }
}

/** How many bits the largest of these numbers has; those above never change. */
function bitsOf(figures: readonly string[], base: 2 | 10 | 16): number {
  const longest = figures.reduce((most, text) => Math.max(most, text.replace(/^0[bx]/i, '').length), 0);
  return Math.min(mostBits, Math.ceil(longest * Math.log2(base)));
}

function mostCommonLength(texts: readonly string[], often: ReadonlyMap<string, number>): number {
  const counts = new Map<number, number>();
  for (const text of texts) counts.set(text.length, (counts.get(text.length) ?? 0) + (often.get(text) ?? 0));
  return [...counts].sort(([, a], [, b]) => b - a)[0]?.[0] ?? 0;
}
