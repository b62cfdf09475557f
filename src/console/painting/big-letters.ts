import { cellsOf, wrapped } from './cells.ts';
import type { Glyphs } from './glyphs.ts';
import { canDraw, type Dots, dotsHigh, dotsOf, dotsWide } from './letter-shapes.ts';

/** How a text is made large; the largest first. */
export type Size = 'doubled' | 'drawn' | 'spaced' | 'plain';

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
  if (!canDraw(text)) return undefined;
  const across = size === 'doubled' ? 2 : 1;
  const lines = wrapped(text, width, (part) => dotsWide(part) * across);
  if (lines.some((line) => cutsAWord(line, text))) return undefined;
  const draw = size === 'doubled' || !glyphs.halves ? fullRows : halfRows;
  return lines.flatMap((line, i) => [
    ...(i > 0 && !glyphs.halves ? [''] : []),
    ...draw(dotsOf(line), across, glyphs),
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

/** Two rows of dots in one row of cells; the sixth row is the space below. */
function halfRows(dots: Dots, _across: number, { full, upper, lower }: Glyphs): string[] {
  return Array.from({ length: Math.ceil(dotsHigh / 2) }, (_, y) =>
    (dots[0] ?? [])
      .map((_dot, x) => {
        const top = dots[2 * y]?.[x];
        const bottom = dots[2 * y + 1]?.[x];
        if (top && bottom) return full;
        return top ? upper : bottom ? lower : ' ';
      })
      .join('')
      .trimEnd(),
  );
}

/**
 * Two parts of an instruction, what to do and where, as large as `rows` rows of `width` cells allow: what to do is never
 * smaller than where.
 */
export function largest(
  what: string,
  where: string,
  { width, rows, glyphs }: { readonly width: number; readonly rows: number; readonly glyphs: Glyphs },
): readonly string[] {
  for (const [first, second] of steps) {
    const top = large(what, first, width, glyphs);
    const below = where === '' ? [] : large(where, second, width, glyphs);
    if (!top || !below) continue;
    const gap = where !== '' && (second === 'spaced' || !glyphs.halves) ? [''] : [];
    const drawn = [...top, ...gap, ...below];
    if (drawn.length <= rows) return drawn;
  }
  return [...wrapped(what, width), ...wrapped(where, width)].slice(0, Math.max(1, rows));
}

const steps: readonly (readonly [Size, Size])[] = [
  ['doubled', 'drawn'],
  ['drawn', 'drawn'],
  ['doubled', 'spaced'],
  ['drawn', 'spaced'],
  ['spaced', 'spaced'],
  ['spaced', 'plain'],
];
