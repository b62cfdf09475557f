import type { CheckName, Status } from '../model/verdict.ts';
import type { ReportRecord } from './record.ts';
import type { InputRow } from './schema/input-row.ts';
import type { VerdictRecord } from './schema/verdict.ts';
import { worstOf } from './worst.ts';

/** The last verdict of a check on a subject; rest is judged by input, not by switch. */
export function verdictOn(record: ReportRecord, check: CheckName, row: InputRow): VerdictRecord | undefined {
  const subject = check === 'rest' ? row.input : row.subject;
  return record.verdicts.find((each) => each.check === check && each.subject === subject);
}

/** The checks that have a column of their own: those that were asked for or that judged some switch. */
export const columnsOf = (record: ReportRecord): readonly CheckName[] =>
  (['rest', 'press', 'open-wire', 'stop'] as const).filter(
    (check) =>
      record.session.asked.checks.includes(check) || record.verdicts.some((each) => each.check === check),
  );

/** The worst a switch got. Rest alone proves nothing, so a switch that was only steady is not tested. */
export function worstOn(record: ReportRecord, row: InputRow): Status {
  const verdicts = columnsOf(record).flatMap((check) => verdictOn(record, check, row) ?? []);
  const asProof = verdicts.filter(({ check, status }) => check !== 'rest' || status !== 'proved');
  return worstOf(asProof.map(({ status }) => status));
}

export const placeText = ({ declared }: InputRow): string => {
  if (declared.place !== undefined) return declared.place;
  const side = declared.side ?? declared.end;
  return declared.axis !== undefined && side !== undefined ? `${side} end of ${declared.axis}` : '';
};
