import { cellsOf, wrapped } from './cells.ts';
import type { Glyphs } from './glyphs.ts';
import { canDraw, type Dots, dotsHigh, dotsOf, dotsWide } from './letter-shapes.ts';

/** How a text is made large; the largest first. */
export type Size = 'doubled' | 'drawn' | 'narrow' | 'spaced' | 'plain';

/** Rows of text for a large text in one size, or undefined where it cannot be drawn or does not fit `width` cells. */
export function large(
  text: string,
  size: Size,
  width: number,
  glyphs: Glyphs,
): readonly string[] | undefined {
  if (size === 'plain') return wrapped(text, width);
  if (size === 'spaced')
    return wrapped(text.toUpperCase(), width, (part) => cellsOf(spaced(part))).map(spaced);
  const isNarrow = size === 'narrow';
  if (!canDraw(text) || (isNarrow && !glyphs.halves)) return undefined;
  const across = { doubled: 2, drawn: 1, narrow: 0.5 }[size];
  const lines = wrapped(text, width, (part) => Math.ceil(dotsWide(part, isNarrow) * across));
  if (lines.some((line) => cutsAWord(line, text))) return undefined;
  return lines.flatMap((line, i) => [
    ...(i > 0 && !glyphs.halves ? [''] : []),
    ...drawing[size](dotsOf(line, isNarrow), glyphs),
  ]);
}

const spaced = (text: string): string => [...text].join(' ');

const cutsAWord = (line: string, text: string): boolean => !` ${text} `.includes(` ${line} `);

const fullRows = (dots: Dots, across: number, { full }: Glyphs): string[] =>
  dots.map((row) =>
    row
      .map((dot) => (dot ? full : ' ').repeat(across))
      .join('')
      .trimEnd(),
  );

/** Cells that hold a block of dots, `across` wide and two high; the sixth row of dots is the space below. */
function blockRows(dots: Dots, across: 1 | 2): string[] {
  const wide = dots[0]?.length ?? 0;
  return Array.from({ length: Math.ceil(dotsHigh / 2) }, (_, y) =>
    Array.from({ length: Math.ceil(wide / across) }, (_, x) => {
      const at = (right: number, down: number) => {
        const dot = dots[2 * y + down]?.[across * x + (across === 1 ? 0 : right)];
        return dot ? 1 << (right + 2 * down) : 0;
      };
      return quarters[at(0, 0) + at(1, 0) + at(0, 1) + at(1, 1)] ?? ' ';
    })
      .join('')
      .trimEnd(),
  );
}

/** Unicode block elements by which quarters are filled: upper left 1, upper right 2, lower left 4, lower right 8. */
const quarters = ' ▘▝▀▖▌▞▛▗▚▐▜▄▙▟█';

const drawing = {
  doubled: (dots: Dots, glyphs: Glyphs) => fullRows(dots, 2, glyphs),
  drawn: (dots: Dots, glyphs: Glyphs) => (glyphs.halves ? blockRows(dots, 1) : fullRows(dots, 1, glyphs)),
  narrow: (dots: Dots) => blockRows(dots, 2),
} satisfies Partial<Record<Size, (dots: Dots, glyphs: Glyphs) => string[]>>;

/**
 * Two parts of an instruction, what to do and where, as large as `rows` rows of `width` cells allow: what to do is never
 * smaller than where. A place told in several clauses keeps the first alone before it is drawn small.
 */
export function largest(
  what: string,
  where: string,
  { width, rows, glyphs }: { readonly width: number; readonly rows: number; readonly glyphs: Glyphs },
): readonly string[] {
  const [clause = where] = where.split(/[,;] /);
  for (const [first, second] of steps) {
    for (const place of isDrawn(second) ? [where, clause] : [where]) {
      const top = large(what, first, width, glyphs);
      const below = place === '' ? [] : large(place, second, width, glyphs);
      if (!top || !below || (place !== '' && !isOneLine(top, first, glyphs))) continue;
      const gap = place !== '' && (second === 'spaced' || !glyphs.halves) ? [''] : [];
      const drawn = [...top, ...gap, ...below];
      if (drawn.length <= rows) return drawn;
    }
  }
  return [...wrapped(what, width), ...wrapped(where, width)].slice(0, Math.max(1, rows));
}

/** A verb that is broken to be larger would take the room of the place. */
const isOneLine = (drawn: readonly string[], size: Size, { halves }: Glyphs): boolean =>
  size === 'spaced' || drawn.length <= (halves && size !== 'doubled' ? Math.ceil(dotsHigh / 2) : dotsHigh);

const isDrawn = (size: Size): boolean => size === 'drawn' || size === 'narrow';

const steps: readonly (readonly [Size, Size])[] = [
  ['doubled', 'drawn'],
  ['drawn', 'drawn'],
  ['doubled', 'narrow'],
  ['drawn', 'narrow'],
  ['narrow', 'narrow'],
  ['doubled', 'spaced'],
  ['drawn', 'spaced'],
  ['narrow', 'spaced'],
  ['spaced', 'spaced'],
  ['spaced', 'plain'],
];
