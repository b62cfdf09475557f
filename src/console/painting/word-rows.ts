import { answerLines } from '../faces/lines-text.ts';
import { wrapped } from './cells.ts';
import { type Canvas, type Row, row } from './row.ts';
import type { ScreenState } from './screen-state.ts';

/** The full words of the ask and its cautions, or what its answers mean where the person asked for that. */
export function wordRows(state: ScreenState, most: number, { width, glyphs }: Canvas): readonly Row[] {
  const { ask } = state;
  if (!ask) return idleRows(state, width).slice(0, most);
  const { text, cautions } = ask.shown;
  const lines = state.explains
    ? answerLines(ask.shown).flatMap((line) => wrapped(line, width - 2).map((each) => row(` ${each}`)))
    : [
        ...wrapped(text, width - 2).map((line) => row(` ${line}`)),
        ...cautions.flatMap((each) => cautionRows(each, width, glyphs.caution)),
      ];
  if (lines.length <= most) return lines;
  return [...lines.slice(0, most - 1), row(' … more in a taller window', 'caution')];
}

/** The mark and the word stand for the colour where there is none. */
function cautionRows(text: string, width: number, mark: string): readonly Row[] {
  const head = ` ${mark} Caution: `;
  return wrapped(text, width - head.length - 1).map(
    (line, i): Row => [
      { text: i === 0 ? head : ' '.repeat(head.length), tone: 'caution' },
      { text: line, tone: 'plain' },
    ],
  );
}

function idleRows({ verdict }: ScreenState, width: number): readonly Row[] {
  return verdict.flatMap((line) => wrapped(line, width - 2)).map((line) => row(` ${line}`));
}
