import { type Status, statuses } from '../../model/verdict.ts';
import { counted, listed } from '../../words/figures.ts';
import { headlineWords } from '../../words/record-words.ts';
import { checkWords, statusWords } from '../../words/verdict-words.ts';
import { type Block, type Cell, list, markOf, strong, type Table } from '../document.ts';
import type { ReportRecord } from '../record.ts';
import { columnsOf, placeText, verdictOn, worstOn } from '../subjects.ts';
import { axisResults } from './axis-results.ts';

/** The first page: the worst line governs it, and every switch has its row. */
export function summaryBlocks(record: ReportRecord): readonly Block[] {
  return [
    {
      kind: 'headline',
      mark: { ...statusWords[record.worst], tone: record.worst },
      text: headlineWords[record.worst],
    },
    ...outFirst(record),
    ...(record.session.stopped
      ? [strong('The session ended before its last check. It can be resumed where it stopped.')]
      : []),
    list(countLines(record)),
    matrix(record),
    ...axisResults(record),
  ];
}

function outFirst({ stillOut }: ReportRecord): readonly Block[] {
  if (stillOut.length === 0) return [];
  const which = listed(stillOut.map(({ subject, at }) => `${subject} at the ${at}`));
  return [strong(`STILL UNPLUGGED: ${which}. A switch that is unplugged stops nothing.`)];
}

export function countLines(record: ReportRecord): readonly string[] {
  const count = (status: Status) => record.inputMap.filter((row) => worstOn(record, row) === status).length;
  const parts = statuses
    .toReversed()
    .filter((status) => count(status) > 0)
    .map((status) => `${count(status)} ${statusWords[status].word.toLowerCase()}`);
  return [
    `${counted(record.inputMap.length, 'switch', 'switches')}: ${listed(parts)}. Each counts by its worst result.`,
    `${counted(record.changes.length, 'change')} to make, ${counted(record.stillOut.length, 'plug')} still out, ${counted(record.untested.length, 'item')} not tested.`,
  ];
}

function matrix(record: ReportRecord): Table {
  const checks = columnsOf(record);
  return {
    kind: 'table',
    label: 'Result of every switch',
    columns: [
      { head: 'Switch' },
      { head: 'Where' },
      ...checks.map((check) => ({ head: checkWords[check].title })),
    ],
    rows: record.inputMap.map((row): readonly Cell[] => [
      row.subject,
      placeText(row),
      ...checks.map((check): Cell => {
        const verdict = verdictOn(record, check, row);
        if (verdict) return markOf(verdict);
        return check === 'stop' && !row.declared.duty.includes('stop')
          ? ''
          : markOf({ check, status: 'not-tested' });
      }),
    ]),
  };
}
