import { traceWords } from '../../words/trace-words.ts';
import { checkWords, evidenceWord, weightWords } from '../../words/verdict-words.ts';
import { circuitName, circuitSentences } from '../../words/wiring/circuits-words.ts';
import { axisSubjects, subjectTitle } from '../axes.ts';
import { type Block, type Drawing, markOf, type Tone, text } from '../document.ts';
import type { ReportRecord } from '../record.ts';
import type { InputRow } from '../schema/input-row.ts';
import type { VerdictRecord } from '../schema/verdict.ts';
import { placeText } from '../subjects.ts';

/** Every verdict, in groups of one switch, then of one axis; an input with several switches has its rest in a group before them. */
export function verdictBlocks(record: ReportRecord): readonly Block[] {
  const grouped = new Set<VerdictRecord>();
  const take = (subjects: readonly string[]) => {
    const found = record.verdicts.filter((each) => subjects.includes(each.subject));
    for (const each of found) grouped.add(each);
    return found;
  };
  const groups = record.inputMap.flatMap((row) => {
    const shared = row.declared.sharedWith.length > 0;
    const first = record.inputMap.find((each) => each.input === row.input) === row;
    const own = shared && first ? group(`${row.input}, the input`, take([row.input])) : [];
    return [
      ...own,
      ...group(
        headingOf(row),
        take(shared ? [row.subject] : [row.subject, row.input]),
        circuitOf(record, row),
      ),
    ];
  });
  const others = record.verdicts.filter((each) => !grouped.has(each));
  const rest = [...new Set([...axisSubjects(record), ...others.map(({ subject }) => subject)])].flatMap(
    (subject) =>
      group(
        subjectTitle(subject),
        others.filter((each) => each.subject === subject),
      ),
  );
  return [...groups, ...rest];
}

const headingOf = (row: InputRow): string =>
  placeText(row) === '' ? row.subject : `${row.subject}: ${placeText(row)}`;

/** Where the circuit of a switch is drawn. */
function circuitOf({ wirings }: ReportRecord, { subject }: InputRow): readonly Block[] {
  const at = wirings.findIndex(({ switches }) => switches.some((each) => each.subject === subject));
  return at < 0 ? [] : [text(circuitSentences.at(circuitName(at)))];
}

function group(
  heading: string,
  verdicts: readonly VerdictRecord[],
  more: readonly Block[] = [],
): readonly Block[] {
  if (verdicts.length === 0) return [];
  const findings = verdicts.flatMap((each) => each.findings);
  const once = findings.filter(({ said }, i) => findings.findIndex((each) => each.said === said) === i);
  const drawings = verdicts.flatMap(drawingsOf);
  const blocks: readonly Block[] = [
    {
      kind: 'table',
      label: `Results of ${heading}`,
      columns: [
        { head: 'Check', width: 11 },
        { head: 'Result', width: 18 },
        { head: 'Evidence', width: 14 },
        { head: 'What was observed' },
      ],
      rows: verdicts.map((verdict) => [
        checkWords[verdict.check].title,
        markOf(verdict),
        evidenceWord(verdict.status, verdict.evidence),
        verdict.says,
      ]),
    },
    ...once.map(({ weight, title, said }) => ({
      kind: 'callout' as const,
      label: weightWords[weight],
      tone: toneOf[weight],
      title,
      text: said,
    })),
    ...(drawings.length === 0 ? [] : [{ kind: 'drawings' as const, drawings }]),
    ...more,
  ];
  return [{ kind: 'group', heading, blocks }];
}

const toneOf = { fault: 'failed', limitation: 'limited', note: 'quiet' } satisfies Record<string, Tone>;

function drawingsOf({ traces, check }: VerdictRecord): readonly Drawing[] {
  return traces.map((trace, i) => {
    const several = traces.filter((each) => each.label === trace.label).length > 1;
    const nth = traces.slice(0, i + 1).filter((each) => each.label === trace.label).length;
    return { trace, title: `${traceWords(trace.label, check)}${several ? ` ${nth}` : ''}` };
  });
}
