import { type Status, statuses } from '../model/verdict.ts';
import { visible } from '../model/visible.ts';
import { causeSentences } from '../words/cause/cause-words.ts';
import { headlineWords } from '../words/record-words.ts';
import { checkWords, statusWords, statusWordWithin, weightWords } from '../words/verdict-words.ts';
import { axisLines } from './axis-lines.ts';
import type { ReportRecord } from './record.ts';
import type { InputRow } from './schema/input-row.ts';
import { countLines } from './sections/summary.ts';
import { columnsOf, placeText, verdictOn, worstOn } from './subjects.ts';
import { titleOf } from './title.ts';
import { wrapped } from './wrapped.ts';

/** The end of a run on a plain terminal: the worst first, no colour, no drawing, nothing wider than 78 columns but a name. */
export function summaryText(record: ReportRecord): string {
  const worstFirst = statuses.toReversed();
  const rows = worstFirst.flatMap((status) =>
    record.inputMap
      .filter((row) => worstOn(record, row) === status)
      .flatMap((row) => rowLines(record, row, status)),
  );
  const axes = axisLines(record, statusWidth).flatMap(({ head, lines }) => [
    head,
    ...lines.flatMap((line) => wrapped(line, '    ', '      ')),
  ]);
  const out = record.stillOut.map(({ subject, at }) => `STILL UNPLUGGED: ${subject} at the ${at}.`);
  const changes = record.changes.flatMap(({ subject, what, from, to }, i) =>
    wrapped(`${i + 1}. ${subject}, ${what}: ${from} -> ${to}`, '  ', '     '),
  );
  return [
    titleOf(record),
    '',
    ...wrapped(`${statusWords[record.worst].word}. ${headlineWords[record.worst]}`, '', ''),
    ...out,
    ...countLines(record).flatMap((line) => wrapped(line)),
    '',
    ...rows,
    ...axes,
    ...streamNotes(record),
    ...(changes.length === 0 ? [] : ['', 'Changes to make (the tool makes none):', ...changes]),
    '',
  ]
    .map(visible)
    .join('\n');
}

const statusWidth = Math.max(...Object.values(statusWords).map(({ word }) => word.length));

function rowLines(record: ReportRecord, row: InputRow, status: Status): readonly string[] {
  const place = placeText(row);
  const verdicts = columnsOf(record).flatMap((check) => verdictOn(record, check, row) ?? []);
  const each = verdicts.map(
    (verdict) => `${checkWords[verdict.check].title.toLowerCase()} ${statusWordWithin(verdict)}`,
  );
  const said = [...new Set(verdicts.flatMap(({ findings }) => findings.map(lineOf)))];
  const head = `${statusWords[status].word.padEnd(statusWidth)}  ${row.subject}${place === '' ? '' : ` (${place})`}`;
  const indent = ' '.repeat(4);
  return [
    head,
    ...(each.length === 0 ? [] : wrapped(each.join('; '), indent, indent)),
    ...said.flatMap((line) => wrapped(line, indent, `${indent}  `)),
    ...causeOf(record, row).flatMap((line) => wrapped(line, indent, `${indent}  `)),
    ...nextStep(record, row).flatMap((line) => wrapped(line, indent, `${indent}  `)),
  ];
}

/** Where a fault names no change to make yet, the first thing to look at; the last finding is the most particular one. */
function nextStep(record: ReportRecord, { subject }: InputRow): readonly string[] {
  if (record.changes.some((change) => change.subject === subject && change.what !== 'cause')) return [];
  const faults = record.verdicts
    .filter((verdict) => verdict.subject === subject)
    .flatMap(({ findings }) => findings.filter(({ weight }) => weight === 'fault'));
  const kind = faults.at(-1)?.facts.kind;
  const step = record.explained.find((each) => each.kind === kind)?.next[0];
  return step === undefined ? [] : [`Next: ${step}`];
}

/** What a search for the cause of this switch's trouble came to. */
const causeOf = ({ verdicts }: ReportRecord, { subject }: InputRow): readonly string[] =>
  verdicts
    .filter((each) => each.check === 'troubleshoot' && each.subject === subject)
    .flatMap(({ facts }) => (facts.cause ? causeSentences(facts.cause).slice(0, 1) : []));

const lineOf = ({ weight, title }: ReportRecord['verdicts'][number]['findings'][number]): string =>
  `${weightWords[weight]}: ${title}.`;

function streamNotes({ verdicts }: ReportRecord): readonly string[] {
  const findings = verdicts.filter(({ subject }) => subject === 'stream').flatMap((each) => each.findings);
  return [...new Set(findings.map((each) => `${lineOf(each)} ${each.said}`))].flatMap((line) =>
    wrapped(`Stream: ${line}`, '', '  '),
  );
}
