import { visible } from '../model/visible.ts';
import { blankWords } from '../words/record-words.ts';
import { isUntested } from './input-map.ts';
import type { MapPage } from './proof.ts';
import { mapTable } from './sections/map.ts';
import { placeText } from './subjects.ts';
import { wrapped } from './wrapped.ts';

/** Columns that are understood without their heading. */
const alone: readonly string[] = ['Duty, axis, end', 'Contact, circuit'];

/** The input map for a terminal: where it comes from, then switch by switch what is declared and what was found. */
export function mapText({ machine, from, rows }: Pick<MapPage, 'machine' | 'from' | 'rows'>): string {
  const table = mapTable(rows);
  const lines = rows.flatMap((row, at) => {
    const cells = (table.rows[at] ?? []).map((cell, i) => {
      const said = typeof cell === 'string' ? cell : 'tone' in cell ? cell.word : cell.join(', ');
      const { head = '', group = '' } = table.columns[i] ?? {};
      const isClear = alone.includes(head) ? said !== blankWords.notStated : said.startsWith('no answer');
      return { group, said: isClear ? said : `${head.toLowerCase()} ${said}` };
    });
    const of = (group: string) =>
      cells
        .filter((cell) => cell.group.startsWith(group))
        .map(({ said }) => said)
        .join('; ');
    const place = placeText(row);
    const found = isUntested(row) ? blankWords.notTested.toLowerCase() : of('Found');
    return [
      ...wrapped(place === '' ? row.subject : `${row.subject} (${place})`),
      ...wrapped(of('Declared'), '  declared  ', ' '.repeat(12)),
      ...wrapped(found, '  found     ', ' '.repeat(12)),
    ];
  });
  const head = wrapped(`${machine}. ${from}`);
  const body = rows.length === 0 ? [blankWords.none] : lines;
  return [...head, '', ...body].map((line) => `${visible(line)}\n`).join('');
}
