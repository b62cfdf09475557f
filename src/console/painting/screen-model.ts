import { largest } from './big-letters.ts';
import { answerRows, echoRow, noticeRows, topRow } from './frame-rows.ts';
import { headline } from './headline.ts';
import { inputRows } from './input-rows.ts';
import { type Canvas, type Row, row } from './row.ts';
import { inputOf, type ScreenState } from './screen-state.ts';
import { wordRows } from './word-rows.ts';

/** At least so many rows for the inputs before the large letters grow. */
const leastInputs = 5;
const blank: Row = row('');

/**
 * The whole screen as at most `height` rows. From the top: what this is, the instruction in large letters, its full words
 * and cautions, the live inputs, the last verdict, what happened last, the answers with their keys. Words, cautions and
 * answers are placed first; the inputs and the large letters share what is left.
 */
export function screenRows(state: ScreenState, canvas: Canvas): readonly Row[] {
  const top = [topRow(state, canvas), ...noticeRows(state, canvas)];
  const foot = [echoRow(state, canvas), ...answerRows(state, canvas)];
  const room = Math.max(0, canvas.height - top.length - foot.length);
  const words = wordRows(state, Math.max(0, room - 1), canvas);
  const free = room - words.length;
  const letters = letterRows(state, free - Math.min(state.inputs.all.length, leastInputs), canvas);
  const asked = state.ask && inputOf(state.ask.shown.ask);
  const live = inputRows(state.inputs, asked, free - letters.length, canvas);
  const left = free - letters.length - live.length;
  const verdict = left > 4 ? state.verdict.slice(0, left - 4).map((text) => row(text, 'faint')) : [];
  const gaps = spread(left - verdict.length);
  return [
    ...top,
    ...gaps.first,
    ...letters,
    ...gaps.second,
    ...words,
    ...gaps.third,
    ...live,
    ...gaps.rest,
    ...verdict,
    ...foot,
  ].slice(0, canvas.height);
}

function letterRows(state: ScreenState, most: number, { width, glyphs }: Canvas): readonly Row[] {
  if (!state.ask) return [];
  const { what, where } = headline(state.ask, glyphs);
  const rows = Math.max(2, most);
  return largest(what, where, { width: width - 2, rows, glyphs }).map((text) => row(` ${text}`, 'strong'));
}

/** Free rows go where they help reading most: below the letters, above them, above the inputs, then above the foot. */
function spread(free: number) {
  const rows = (count: number): readonly Row[] => Array.from({ length: Math.max(0, count) }, () => blank);
  return {
    second: rows(Math.min(1, free)),
    third: rows(Math.min(1, free - 1)),
    first: rows(Math.min(1, free - 2)),
    rest: rows(free - 3),
  };
}
