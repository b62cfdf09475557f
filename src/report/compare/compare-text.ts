import { visible } from '../../model/visible.ts';
import { compareWords } from '../../words/compare-words.ts';
import { counted, momentText } from '../../words/figures.ts';
import { wrapped } from '../wrapped.ts';
import type { Compared } from './compared.ts';
import type { Difference, Topic } from './difference.ts';

const headings = {
  asked: 'Asked for',
  wiring: 'Wiring',
  rest: 'At rest',
  verdict: 'Results',
  stream: 'Stream',
} satisfies Record<Topic, string>;

/** For a terminal: what changed by topic, and where to look; of two machines, in what they are unlike. */
export function compareText(found: Compared): string {
  const { machines, differences, suggestions } = found;
  const shown = machines.same ? differences : differences.filter(({ what }) => what !== 'machine');
  const oneSided = machines.same ? [] : shown.filter(isPresence);
  const absent = new Set(oneSided.map(({ subject }) => subject));
  const byTopic = Object.entries(headings).flatMap(([topic, heading]) => {
    const own = shown.filter(
      (each) => each.topic === topic && !oneSided.includes(each) && (machines.same || isShared(each, absent)),
    );
    return own.length === 0
      ? []
      : ['', `${heading}:`, ...own.flatMap((each) => differenceLines(each, machines.same))];
  });
  return [
    ...headLines(found),
    ...presenceLines(oneSided, machines),
    ...byTopic,
    ...(suggestions.length > 0 ? ['', compareWords.whereToLook] : []),
    ...suggestions.flatMap((each) => wrapped(each, '  - ', '    ')),
    ...(machines.same ? ['', countText(differences.length)] : []),
  ]
    .map((line) => `${visible(line)}\n`)
    .join('');
}

const countText = (count: number): string =>
  count === 0 ? compareWords.none : `${counted(count, 'difference')}.`;

function headLines({ old, new: now, machines }: Compared): readonly string[] {
  if (machines.same) return wrapped(compareWords.sessions(momentText(old), momentText(now)));
  return [
    compareWords.twoMachines,
    ...wrapped(`${machines.old}, ${momentText(old)}`, '  old: ', '       '),
    ...wrapped(`${machines.new}, ${momentText(now)}`, '  new: ', '       '),
    ...wrapped(compareWords.noChanges),
  ];
}

/** A switch that stands in one machine file and not in the other. */
const isPresence = ({ topic, what }: Difference): boolean => topic === 'wiring' && what === 'switch';

/** What is said of a subject of one machine alone is no difference to the other. */
const isShared = ({ topic, subject, old, new: now }: Difference, absent: ReadonlySet<string>): boolean =>
  !absent.has(subject) &&
  (topic === 'asked' || topic === 'stream' || (old !== undefined && now !== undefined));

function presenceLines(
  oneSided: readonly Difference[],
  { old, new: now }: Compared['machines'],
): readonly string[] {
  const only = (machine: string, subjects: readonly string[]) =>
    subjects.length === 0 ? [] : ['', ...wrapped(compareWords.onlyIn(machine, subjects), '', '  ')];
  return [
    ...only(
      old,
      oneSided.filter((each) => each.old !== undefined).map(({ subject }) => subject),
    ),
    ...only(
      now,
      oneSided.filter((each) => each.new !== undefined).map(({ subject }) => subject),
    ),
  ];
}

function differenceLines(each: Difference, isChange: boolean): readonly string[] {
  const { subject, what, old, new: now } = each;
  const said = (value: string | undefined) =>
    value === 'not-tested' ? compareWords.notTested : (value ?? absentWord(each));
  const between = isChange ? ' -> ' : ' | ';
  return wrapped(`${subject}, ${what}: ${said(old)}${between}${said(now)}`, '  ', '      ');
}

/** What it means that one side says nothing of it. */
function absentWord(difference: Difference): string {
  const { topic, what } = difference;
  if (difference.topic === 'verdict' && difference.part === 'findings') return compareWords.noFinding;
  if (isPresence(difference)) return compareWords.notInFile;
  if (topic === 'asked') return what === 'only' ? compareWords.all : compareWords.notStated;
  return what.startsWith('declared') ? compareWords.notStated : compareWords.notTested;
}
