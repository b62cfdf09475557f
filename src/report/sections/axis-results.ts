import { checkWords } from '../../words/verdict-words.ts';
import { axisColumns, axisSubjects, axisVerdicts, subjectTitle } from '../axes.ts';
import { type Block, type Cell, markOf } from '../document.ts';
import type { ReportRecord } from '../record.ts';

/** One row for each axis; a machine whose axes nobody asked about has none. */
export function axisResults(record: ReportRecord): readonly Block[] {
  const checks = axisColumns(record);
  const subjects = axisSubjects(record);
  if (subjects.length === 0) return [];
  const isAxis = (subject: string) => record.machine.axes.some(({ letter }) => letter === subject);
  return [
    {
      kind: 'table',
      label: 'Result of every axis',
      columns: [{ head: 'Axis' }, ...checks.map((check) => ({ head: checkWords[check].title }))],
      rows: subjects.map((subject): readonly Cell[] => [
        subjectTitle(subject),
        ...checks.map((check): Cell => {
          const verdict = axisVerdicts(record, subject).find((each) => each.check === check);
          if (verdict) return markOf(verdict);
          return isAxis(subject) ? markOf({ check, status: 'not-tested' }) : '';
        }),
      ]),
    },
  ];
}
