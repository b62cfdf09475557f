import { visible } from '../../model/visible.ts';
import { type Block, type Cell, isMark, type Section, type Table } from '../document.ts';
import { terminalWidth as width, wrapped } from '../wrapped.ts';

/** Sections as plain text: headings in capitals, fields and tables in columns, sentences wrapped. */
export const plainText = (title: string, sections: readonly Section[]): string =>
  [
    title,
    '',
    ...sections.flatMap(({ heading, blocks }) => [heading.toUpperCase(), '', ...blocks.flatMap(blockLines)]),
  ]
    .map((line) => visible(line).trimEnd())
    .join('\n');

function blockLines(block: Block): readonly string[] {
  switch (block.kind) {
    case 'text':
      return [...wrapped(block.text), ''];
    case 'list':
      return [...block.items.flatMap((item) => wrapped(item, '- ', '  ')), ''];
    case 'commands':
      return [...block.lines, ''];
    case 'fields': {
      const wide = Math.max(...block.fields.map(([label]) => label.length));
      return [
        ...block.fields.flatMap(([label, value = '']) =>
          wrapped(value, `${label.padEnd(wide)}  `, ' '.repeat(wide + 2)),
        ),
        '',
      ];
    }
    case 'table':
      return tableLines(block);
    case 'group':
      return [
        block.heading,
        ...block.blocks.flatMap((each) => blockLines(each).filter((line) => line !== '')),
        '',
      ];
    case 'headline':
    case 'callout':
      return [...wrapped(block.text), ''];
    case 'drawings':
    case 'schematics':
    case 'pictures':
    case 'space':
      return [];
  }
}

const cellText = (cell: Cell): string =>
  typeof cell === 'string' ? cell : isMark(cell) ? cell.word : cell.join('; ');

/** Each column as wide as its longest cell or a fair share of the line; longer cells wrap within it. */
function tableLines({ columns, rows }: Table): readonly string[] {
  const heads = columns.map(({ head, group }) => (group === undefined ? head : `${group}: ${head}`));
  const cells = rows.map((row) => row.map(cellText));
  const column = (at: number) => cells.map((row) => row[at] ?? '');
  const widths = fitted(
    columns.map((_, at) => Math.max(longestWord(heads[at] ?? ''), ...column(at).map(({ length }) => length))),
    columns.map((_, at) => Math.max(longestWord(heads[at] ?? ''), ...column(at).map(longestWord))),
  );
  const row = (each: readonly string[]) => rowLines(each, widths);
  return [
    ...row(heads),
    '-'.repeat(widths.reduce((sum, one) => sum + one + 2, -2)),
    ...cells.flatMap(row),
    '',
  ];
}

const words = (text: string): readonly string[] => text.split(' ');
/** No column is narrower than this: a word is never broken, and one that stood out would push its neighbours out of line. */
const longestWord = (text: string): number => Math.max(...words(text).map(({ length }) => length));

function fitted(longest: readonly number[], least: readonly number[]): readonly number[] {
  const widths = [...longest];
  while (widths.reduce((sum, one) => sum + one + 2, -2) > width) {
    const room = widths.map((one, at) => one - (least[at] ?? 0));
    const widest = room.indexOf(Math.max(...room));
    if ((room[widest] ?? 0) <= 0) break;
    widths[widest] = (widths[widest] ?? 0) - 1;
  }
  return widths;
}

function rowLines(cells: readonly string[], widths: readonly number[]): readonly string[] {
  const columns = cells.map((cell, at) => split(cell, widths[at] ?? width));
  const height = Math.max(...columns.map((lines) => lines.length));
  return Array.from({ length: height }, (_, line) =>
    columns.map((lines, at) => (lines[line] ?? '').padEnd(widths[at] ?? 0)).join('  '),
  );
}

function split(cell: string, most: number): readonly string[] {
  const lines: string[] = [];
  for (const word of words(cell)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
