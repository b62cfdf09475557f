import { statuses } from '../model/verdict.ts';
import { checkWords, statusWords, statusWordWithin, weightWords } from '../words/verdict-words.ts';
import { axisSubjects, axisVerdicts, subjectTitle } from './axes.ts';
import type { ReportRecord } from './record.ts';
import { worstOf } from './worst.ts';

/** What a plain terminal is told of one axis: its head, and the lines under it. */
export interface AxisLines {
  readonly head: string;
  readonly lines: readonly string[];
}

/** Every axis that was judged, the worst first. */
export function axisLines(record: ReportRecord, width: number): readonly AxisLines[] {
  const judged = axisSubjects(record)
    .map((subject) => ({ subject, verdicts: axisVerdicts(record, subject) }))
    .filter(({ verdicts }) => verdicts.length > 0)
    .map((each) => ({ ...each, worst: worstOf(each.verdicts.map(({ status }) => status)) }));
  return [...judged]
    .sort((one, other) => statuses.indexOf(other.worst) - statuses.indexOf(one.worst))
    .map(({ subject, verdicts, worst }) => ({
      head: `${statusWords[worst].word.padEnd(width)}  ${subjectTitle(subject)}`,
      lines: [
        verdicts
          .map((verdict) => `${checkWords[verdict.check].title.toLowerCase()} ${statusWordWithin(verdict)}`)
          .join('; '),
        ...new Set(
          verdicts.flatMap(({ findings }) =>
            findings.map(({ weight, title }) => `${weightWords[weight]}: ${title}.`),
          ),
        ),
        ...nextStep(record, verdicts),
      ],
    }));
}

/** The first thing to look at after a fault. */
function nextStep(record: ReportRecord, verdicts: ReturnType<typeof axisVerdicts>): readonly string[] {
  const fault = verdicts.flatMap(({ findings }) => findings).find(({ weight }) => weight === 'fault');
  const step = record.explained.find(({ kind }) => kind === fault?.facts.kind)?.next[0];
  return step === undefined ? [] : [`Next: ${step}`];
}
