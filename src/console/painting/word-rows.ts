import { askedAgain } from '../../words/ask-words.ts';
import { answerKeyLines } from '../faces/lines-text.ts';
import { wrapped } from './cells.ts';
import { type Canvas, type Row, row } from './row.ts';
import type { ScreenState } from './screen-state.ts';

/** The full words of the ask and its cautions; where the person asked for it, also what the answers mean. */
export function wordRows(state: ScreenState, most: number, { width, glyphs }: Canvas): readonly Row[] {
  const { ask } = state;
  if (!ask) return idleRows(state, width).slice(0, most);
  const { text, cautions } = ask.shown;
  const plain = (line: string): readonly Row[] => wrapped(line, width - 2).map((each) => row(` ${each}`));
  const rows = [
    ...(ask.shown.again === undefined ? [] : plain(askedAgain)),
    ...plain(text),
    ...cautions.flatMap((each, i) => cautionRows(each, i === 0, width, glyphs.caution)),
    ...(state.explains ? [row(''), ...answerKeyLines(ask.shown).flatMap(plain)] : []),
  ];
  if (rows.length <= most) return rows;
  const more = state.explains ? ' … and more in a taller window' : ' … and more: press ?';
  return [...rows.slice(0, most - 1), row(more, 'caution')];
}

/** The mark stands before each, the word once before them all: neither needs a colour. */
function cautionRows(text: string, isFirst: boolean, width: number, mark: string): readonly Row[] {
  const head = isFirst ? ` ${mark} Caution: ` : ` ${mark} `;
  return wrapped(`${head.slice(3)}${text}`, width - 4).map((line, i): Row => {
    const told = head.slice(3).length;
    if (i > 0) return row(`   ${line}`);
    return [
      { text: head, tone: 'caution' },
      { text: line.slice(told), tone: 'plain' },
    ];
  });
}

function idleRows({ verdict }: ScreenState, width: number): readonly Row[] {
  return verdict.flatMap((line) => wrapped(line, width - 2)).map((line) => row(` ${line}`));
}
