import type { CheckName } from '../model/verdict.ts';
import type { ReportRecord } from './record.ts';
import type { VerdictRecord } from './schema/verdict.ts';

/** Checks that judge axes, not switches. */
export const axisChecks = [
  'seek',
  'homing',
  'repeat',
  'stopping',
  'envelope',
  'scale',
] as const satisfies readonly CheckName[];

const isAxisCheck = (check: CheckName): boolean => axisChecks.some((each) => each === check);

/** The axis checks that were asked for or gave a verdict. */
export const axisColumns = ({ session, verdicts }: ReportRecord): readonly CheckName[] =>
  axisChecks.filter(
    (check) => session.asked.checks.includes(check) || verdicts.some((each) => each.check === check),
  );

/** What axis checks judge: every axis of the machine, then what concerns several of them, and a program. */
export function axisSubjects(record: ReportRecord): readonly string[] {
  if (axisColumns(record).length === 0) return [];
  const others = record.verdicts
    .filter(({ check, subject }) => isAxisCheck(check) && subject !== 'stream')
    .map(({ subject }) => subject);
  return [...new Set([...record.machine.axes.map(({ letter }) => letter), ...others])];
}

export const axisVerdicts = ({ verdicts }: ReportRecord, subject: string): readonly VerdictRecord[] =>
  verdicts.filter((each) => each.subject === subject && isAxisCheck(each.check));

/** A subject that is no switch, as a heading. */
export function subjectTitle(subject: string): string {
  if (subject === 'axes' || subject === 'machine') return 'All axes together';
  if (subject === 'program') return 'The program';
  if (subject === 'stream') return 'The stream';
  return /^[XYZABCUVW]$/.test(subject) ? `${subject} axis` : subject;
}
