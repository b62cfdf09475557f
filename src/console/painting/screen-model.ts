import { largest } from './big-letters.ts';
import { dangerRows } from './danger-rows.ts';
import { answerRows, echoRow, noticeRows, topRow } from './frame-rows.ts';
import { headline } from './headline.ts';
import { inputRows } from './input-rows.ts';
import { ownLineRows } from './own-line-rows.ts';
import { type Canvas, clipped, type Row, row } from './row.ts';
import { inputOf, type ScreenState } from './screen-state.ts';
import { wordRows } from './word-rows.ts';

/** At least so many rows for the inputs before the large letters grow: more where an input is to answer. */
const leastInputs = ({ ask, explains }: ScreenState): number => {
  if (explains) return 0;
  return ask && ['look', 'confirm', 'power'].includes(ask.shown.ask.action) ? 2 : 4;
};
/** What to do and where, in plain text. */
const leastLetters = 2;
const blank: Row = row('');

/**
 * The whole screen as at most `height` rows. From the top: what this is, the instruction in large letters, its full words
 * and cautions, the live inputs, the last verdict, what happened last, the answers with their keys. Words, cautions and
 * answers are placed first; the large letters take what they need before the inputs spread.
 */
export function screenRows(state: ScreenState, canvas: Canvas): readonly Row[] {
  if (state.danger !== undefined) return dangerRows(state.danger, canvas);
  if (state.prompt.isOpen) return ownLineRows(state, canvas);
  const top = [topRow(state, canvas), ...noticeRows(state, canvas)];
  const whole = [...verdictRow(state), echoRow(state, canvas), ...answerRows(state, canvas)];
  const foot = whole.slice(-Math.max(1, Math.floor(canvas.height / 2)));
  const room = Math.max(0, canvas.height - top.length - foot.length);
  const words = fittingWords(state, Math.max(0, room - leastLetters), canvas);
  const free = room - words.length;
  const letters = letterRows(state, free - Math.min(state.inputs.all.length, leastInputs(state)), canvas);
  const asked = state.ask && inputOf(state.ask.shown.ask);
  const spared = letters.length > 2 ? 1 : 0;
  const live = inputRows(state.inputs, asked, free - letters.length - spared, canvas);
  const gaps = spread(free - letters.length - live.length);
  const shown = [
    ...top,
    ...gaps.first,
    ...letters,
    ...gaps.second,
    ...words,
    ...gaps.third,
    ...live,
    ...gaps.rest,
  ];
  const rows = [...shown.slice(0, Math.max(1, canvas.height - foot.length)), ...foot];
  return rows.slice(-canvas.height).map((each) => clipped(each, canvas.width));
}

/** Where they are cut anyway and an input is to answer, one row less of them leaves one for the inputs. */
function fittingWords(state: ScreenState, most: number, canvas: Canvas): readonly Row[] {
  const whole = wordRows(state, Number.POSITIVE_INFINITY, canvas);
  if (whole.length <= most) return whole;
  return wordRows(state, Math.max(0, leastInputs(state) > 2 ? most - 1 : most), canvas);
}

/** While something is asked, the last verdict in one row; in between it has the page to itself. */
const verdictRow = ({ ask, verdict }: ScreenState): readonly Row[] =>
  ask && verdict[0] !== undefined ? [row(` ${verdict[0]}`, 'faint')] : [];

function letterRows(state: ScreenState, most: number, { width, glyphs }: Canvas): readonly Row[] {
  if (!state.ask || state.explains) return [];
  const { what, where } = headline(state.ask, glyphs);
  const rows = Math.max(leastLetters, most);
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
