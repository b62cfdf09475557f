import { type LinesMeant, mayBeMissing, type Part, present } from '../../model/stream-description.ts';
import type { Answer } from './answers.ts';
import type { Choice } from './choices.ts';
import type { Series } from './series.ts';

type Base = 2 | 10 | 16;
/** How one and the same text can be read, where several inputs share it. */
export type BaseReading =
  | { readonly base: Base }
  | { readonly bases: readonly [Base, Base, ...Base[]] }
  | undefined;

const basesOf = ({ answers }: Choice): readonly Base[] => [
  ...new Set(answers.flatMap(({ part }) => (part.kind === 'bit' ? [part.base] : []))),
];
const bitsIn = ({ answers }: Choice, base: Base): number =>
  new Set(answers.flatMap(({ part }) => (part.kind === 'bit' && part.base === base ? [part.bit] : []))).size;

/** Common texts of a choice's value, whichever kind of line it was found in. */
const textsOf = ({ answers }: Choice) =>
  new Set(answers.flatMap(({ part, series }) => (part.kind === 'bit' ? series.texts : [])));

/**
 * Which base the numbers in one place are written in, from all inputs found in it: the one in which each input has one bit. Where
 * several bases would do and could come to differ, nobody can say; where they cannot, the usual one is taken.
 */
export function baseOf(choices: readonly Choice[]): BaseReading {
  const common = ([2, 10, 16] as const).filter((base) =>
    choices.every((choice) => basesOf(choice).includes(base)),
  );
  if (common.length === 0) return undefined;
  const cost = (base: Base) => choices.reduce((sum, choice) => sum + bitsIn(choice, base), 0);
  const least = Math.min(...common.map(cost));
  const fit = common.filter((base) => cost(base) === least);
  const texts = new Set(choices.flatMap((choice) => [...textsOf(choice)]));
  const [only] = fit;
  if (only === undefined) return undefined;
  if (fit.length === 1) return { base: only };
  const all = [...texts];
  const marked = all.filter((text) => /^0x/i.test(text)).length > all.length / 2;
  if (marked) return { base: 16 };
  if (fit.includes(2) && all.length > 1 && mostly(all, /^(?:0b)?[01]{3,}$/i)) return { base: 2 };
  if (mostly(all, /^0[0-9a-f]+$|^[0-9a-f]*[a-f][0-9a-f]*$/i) && fit.includes(16) && !fit.includes(2))
    return { base: 16 };
  // Up to seven, ten and sixteen are written alike.
  const highest = choices.flatMap(({ answers }) =>
    answers.map(({ part }) => (part.kind === 'bit' && part.base === 10 ? part.bit : 0)),
  );
  // The last bit of a number is its last figure's, in any base.
  const lowest = choices.every(({ answers }) =>
    answers.every(({ part }) => part.kind !== 'bit' || part.bit === 0),
  );
  if (lowest) return { base: only };
  const [a, b, ...more] = fit;
  if (!fit.includes(2) && Math.max(...highest) <= 2 && all.every((text) => text.length === 1))
    return { base: 10 };
  return a !== undefined && b !== undefined ? { bases: [a, b, ...more] } : { base: only };
}

const mostly = (texts: readonly string[], form: RegExp) =>
  texts.filter((text) => form.test(text)).length >= texts.length * 0.5;

/** The lower, the sooner read so. */
function rankOf(answer: Answer, base: Base | undefined): number {
  const { part, series } = answer;
  const texts = series.texts.filter(
    (_, i) => (series.counts[i] ?? 0) > Math.max(1, series.at.length * 0.002),
  );
  switch (part.kind) {
    case 'whole':
      return texts.length === 2 && !texts.some(isMask)
        ? 0
        : answer.rest.length === 1 && !texts.some(isMask)
          ? 1
          : 5;
    case 'bit':
      return part.base === base ? 2 : 9;
    case 'character':
      return isSign(texts, part) ? 1 : 6;
    case 'letter':
      return 3;
    case 'word':
      return (part.word.length === 1 ? 4 : 2) + (answer.rest[0] === present ? 2 : 0);
  }
}

/** More than one figure's worth of bits: two and more. */
const isMask = (text: string) =>
  /^(?:0[bx])?[0-9a-f]+$/i.test(text) && !/^[01]$/.test(text) && /\d/.test(text);

/** Characters of which each has two forms and the whole is no number. */
function isSign(texts: readonly string[], part: Extract<Part, { kind: 'character' }>): boolean {
  const fitting = texts.filter((text) => text.length === part.length);
  const forms = (index: number) => new Set(fitting.map((text) => text[index])).size;
  const twoEach = Array.from({ length: part.length }, (_, i) => forms(i)).every((count) => count <= 2);
  const binary = fitting.every((text) => /^[01]+$/.test(text));
  return twoEach && (binary || !fitting.every((text) => /^[0-9a-fx]+$/i.test(text)));
}

/** The one of a place to be read: the plainest, in the most lines, chosen the closest. */
export function readingOf({ answers }: Choice, base: Base | undefined): Answer {
  const [first, ...more] = answers;
  const most = answers.reduce((best, { lines }) => Math.max(best, lines), 0);
  const cost = (answer: Answer) =>
    (answer.lines < most * 0.98 ? 1000 : 0) +
    (answer.odd > answer.lines * 0.06 ? 500 : 0) +
    rankOf(answer, base) * 10 +
    (/^(?:word|number)-\d/.test(answer.series.field) ? 4 : 0) +
    (isToldEmpty(answer) && answer.series.lines.has === answer.series.field ? -0.1 : 0) +
    linesRank(answer.series);
  return more.reduce((best, each) => (cost(each) < cost(best) ? each : best), first);
}

/** So many of the lines without a set may be damaged ones. */
const mostDamaged = 0.05;

/** The set of words that is looked at was told where it held none: where a line does not tell it, the line is damaged or another. */
const isToldEmpty = ({ part, series: { texts, counts } }: Answer): boolean =>
  mayBeMissing(part) && texts.some((text, i) => text === '' && (counts[i] ?? 0) > 2);

/** The lines in which an answer is read: of those that should tell a set of words, the ones that do. */
export function linesToRead(answer: Answer): LinesMeant {
  const { lines, field } = answer.series;
  const isSure = isToldEmpty(answer) && answer.missing <= answer.lines * mostDamaged;
  return isSure && lines.has === undefined ? { ...lines, has: field } : lines;
}

export const isBareColumn = ({ field }: Pick<Series, 'field'>): boolean =>
  /^(?:\d|word-|number-)/.test(field);

/**
 * How loosely lines are chosen: the lower, the sooner read so. A bare column has no name to be known by, so that a line of another
 * length, in which something else may stand in its place, is better left alone.
 */
export function linesRank({ field, lines }: Series): number {
  if (lines.values !== undefined) return lines.begins === undefined ? 1 : 0;
  if (lines.begins !== undefined) return 0;
  if (lines.has !== undefined) return 1.5;
  return (lines.count === undefined) === isBareColumn({ field }) ? 3 : 2;
}
