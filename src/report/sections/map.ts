import { blankWords } from '../../words/record-words.ts';
import type { Cell, Table } from '../document.ts';
import type { InputRow } from '../schema/input-row.ts';
import { placeText } from '../subjects.ts';

const lines = (...parts: readonly (string | undefined)[]): readonly string[] =>
  parts.filter((part): part is string => part !== undefined && part !== '');

const orNotStated = (cell: readonly string[]): Cell => (cell.length === 0 ? blankWords.notStated : cell);

/** The input map as a table; declared and found in columns of their own. */
export function mapTable(rows: readonly InputRow[]): Table {
  const declared = 'Declared in the machine file';
  const found = 'Found';
  return {
    kind: 'table',
    label: 'Input map',
    columns: [
      { head: 'Switch', width: 19 },
      { head: 'Duty, axis, end', group: declared, width: 13 },
      { head: 'Terminal', group: declared, width: 10 },
      { head: 'Contact, circuit', group: declared, width: 20 },
      { head: 'Setting', group: declared, width: 11 },
      { head: 'Answers on', group: found, width: 9 },
      { head: 'Contact', group: found, width: 9 },
      { head: 'Broken wire', group: found, width: 9 },
    ],
    rows: rows.map((row) => [
      lines(row.subject, placeText(row), row.subject === row.input ? undefined : `on ${row.input}`),
      orNotStated(dutyLines(row)),
      orNotStated(lines(row.declared.terminal, row.declared.connector)),
      orNotStated(lines(contactLine(row), row.declared.circuit, voltageLine(row))),
      orNotStated(lines(row.declared.polarity)),
      lines(answersText(row), settingFound(row)),
      row.found.contact ?? blankWords.notTested.toLowerCase(),
      breakText(row),
    ]),
  };
}

const dutyLines = ({ declared }: InputRow): readonly string[] =>
  lines(
    declared.duty.join(', '),
    declared.axis === undefined
      ? undefined
      : `${declared.axis}${declared.end === undefined ? '' : ` ${declared.end}`}${declared.motor === undefined ? '' : `, motor ${declared.motor}`}`,
    declared.sharedWith.length === 0
      ? undefined
      : `in ${declared.joined} with ${declared.sharedWith.join(', ')}`,
  );

const sensorWords: Readonly<Record<string, string>> = {
  contact: 'switch',
  npn: 'NPN sensor',
  pnp: 'PNP sensor',
  'two-wire': 'two-wire sensor',
  hall: 'Hall sensor',
  optical: 'optical sensor',
};

const contactLine = ({ declared: { contact, sensor } }: InputRow): string =>
  lines(contact, sensor === undefined ? undefined : (sensorWords[sensor] ?? sensor)).join(' ');

const voltageLine = ({ declared }: InputRow): string | undefined =>
  declared.circuit !== undefined || declared.voltage === undefined
    ? undefined
    : declared.voltage.startsWith('said')
      ? `voltage ${declared.voltage}`
      : declared.voltage;

const answersText = ({ found }: InputRow): string =>
  found.answersOn ?? (found.noAnswer ? 'no answer' : blankWords.notTested.toLowerCase());

const settingFound = ({ found }: InputRow): string | undefined =>
  found.polarity === 'reversed' ? 'setting reversed' : undefined;

function breakText({ found }: InputRow): string {
  if (found.contact !== undefined && found.polarity === 'reversed' && found.breakNoticed === undefined)
    return 'judge after the setting is right';
  if (found.breakNoticed === undefined) return blankWords.notTested.toLowerCase();
  return found.breakNoticed ? 'noticed' : 'goes unnoticed';
}
