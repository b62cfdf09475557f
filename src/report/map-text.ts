import { visible } from '../model/visible.ts';
import { blankWords } from '../words/record-words.ts';
import { tableLines } from './markdown.ts';
import type { InputRow } from './schema/input-row.ts';
import { mapTable } from './sections/map.ts';
import { placeText } from './subjects.ts';

/** The input map for a terminal: three lines a switch, declared and found apart. */
export function mapText(rows: readonly InputRow[]): string {
  const table = mapTable(rows);
  const lines = rows.flatMap((row, at) => {
    const cells = (table.rows[at] ?? []).map((cell, i) => {
      const said = typeof cell === 'string' ? cell : 'tone' in cell ? cell.word : cell.join(', ');
      const { head = '', group = '' } = table.columns[i] ?? {};
      const alone = group.startsWith('Declared') && said !== blankWords.notStated;
      return { group, said: alone ? said : `${head.toLowerCase()} ${said}` };
    });
    const of = (group: string) =>
      cells
        .filter((cell) => cell.group.startsWith(group))
        .map(({ said }) => said)
        .join('; ');
    const place = placeText(row);
    return [
      visible(place === '' ? row.subject : `${row.subject} (${place})`),
      visible(`  declared  ${of('Declared')}`),
      visible(`  found     ${of('Found')}`),
    ];
  });
  return rows.length === 0 ? `${blankWords.none}\n` : `${lines.join('\n')}\n`;
}

/** The input map as a Markdown table. */
export const mapMarkdown = (rows: readonly InputRow[]): string =>
  `${tableLines(mapTable(rows)).join('\n')}\n`;
