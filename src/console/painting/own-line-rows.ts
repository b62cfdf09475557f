import { ownLineWords } from '../../words/own-line-words.ts';
import { wrapped } from './cells.ts';
import { type Canvas, clipped, type Row, row } from './row.ts';
import type { ScreenState } from './screen-state.ts';

/** The prompt for a line of the person's own has the page to itself: what is typed there is no answer to an ask. */
export function ownLineRows(state: ScreenState, { width, height, glyphs }: Canvas): readonly Row[] {
  const words = (line: string): readonly Row[] => wrapped(line, width - 5).map((each) => row(`   ${each}`));
  const said = state.promptLines.flatMap(words);
  const asked = state.ask === undefined ? [] : [row(` ${state.ask.short}`)];
  const field: Row = [
    { text: ' > ', tone: 'strong' },
    { text: ` ${state.typed}_ `.slice(-(width - 4)), tone: 'marked' },
  ];
  const head = [row(` ${glyphs.caution} ${ownLineWords.title}`, 'caution'), ...asked, row('')];
  const foot = [row(''), field, row(''), row(` ${ownLineWords.keys}`)];
  const room = Math.max(0, height - head.length - foot.length);
  return [...head, ...said.slice(0, room), ...foot].slice(-height).map((each) => clipped(each, width));
}
