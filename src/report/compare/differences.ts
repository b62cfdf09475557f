import type { ReportRecord } from '../record.ts';
import type { InputRow } from '../schema/input-row.ts';
import type { VerdictRecord } from '../schema/verdict.ts';
import type { Difference, Topic, VerdictChange } from './difference.ts';
import { streamDifferences } from './stream-differences.ts';

/** Everything in which two sessions differ, in the order of the paper: what was asked, wiring, rest, verdicts, stream. */
export const differencesOf = (old: ReportRecord, now: ReportRecord): readonly Difference[] => [
  ...askedDifferences(old, now),
  ...rowDifferences(old, now),
  ...verdictDifferences(old, now),
  ...streamDifferences(old.stream, now.stream),
];

const unlike = (
  topic: Exclude<Topic, 'verdict' | 'stream'>,
  subject: string,
  what: string,
  old: string | undefined,
  now: string | undefined,
): readonly Difference[] => (old === now ? [] : [{ topic, subject, what, old, new: now }]);

function askedDifferences(
  { session: a, machine: m }: ReportRecord,
  { session: b, machine: n }: ReportRecord,
) {
  return [
    ...unlike('asked', 'session', 'machine', m.name, n.name),
    ...unlike('asked', 'session', 'checks', a.asked.checks.join(' '), b.asked.checks.join(' ')),
    ...unlike('asked', 'session', 'only', a.asked.only?.join(' '), b.asked.only?.join(' ')),
    ...unlike('asked', 'session', 'presses', String(a.asked.presses), String(b.asked.presses)),
  ];
}

function rowDifferences(old: ReportRecord, now: ReportRecord): readonly Difference[] {
  return both(old.inputMap, now.inputMap, ({ subject }) => subject).flatMap(
    ([a, b]): readonly Difference[] => {
      const { subject } = b ?? a ?? { subject: '' };
      if (a === undefined || b === undefined)
        return unlike('wiring', subject, 'switch', a && 'in the machine file', b && 'in the machine file');
      return [
        ...fields('wiring', subject, declaredOf(a), declaredOf(b)),
        ...fields('wiring', subject, foundOf(a), foundOf(b)),
        ...fields('rest', subject, restOf(a), restOf(b)),
      ];
    },
  );
}

type Told = Readonly<Record<string, string | undefined>>;

const fields = (topic: 'wiring' | 'rest', subject: string, old: Told, now: Told): readonly Difference[] =>
  [...new Set([...Object.keys(old), ...Object.keys(now)])].flatMap((key) =>
    unlike(topic, subject, key, old[key], now[key]),
  );

const declaredOf = ({ input, declared }: InputRow): Told =>
  Object.fromEntries([
    ['declared input', input],
    ...Object.entries(declared).map(([key, value]) => [`declared ${key}`, String(value) || undefined]),
  ]);

const foundOf = ({ found }: InputRow): Told => ({
  'contact found': found.contact,
  'answers on': found.noAnswer ? 'no input' : found.answersOn,
  'setting found': found.polarity,
  'broken wire noticed': found.breakNoticed === undefined ? undefined : found.breakNoticed ? 'yes' : 'no',
});

const restOf = ({ found }: InputRow): Told => ({
  'rest level': found.restLevel,
  'rest active': found.restActive,
});

function verdictDifferences(old: ReportRecord, now: ReportRecord): readonly Difference[] {
  const key = ({ check, subject }: VerdictRecord) => `${check} ${subject}`;
  return both(old.verdicts, now.verdicts, key).flatMap(([a, b]): readonly Difference[] => {
    const one = b ?? a;
    if (one === undefined) return [];
    const { subject, check } = one;
    const of = { topic: 'verdict', subject, check } as const;
    const changes: readonly VerdictChange[] = [
      { ...of, part: 'status', what: check, old: a?.status, new: b?.status },
      { ...of, part: 'findings', what: `${check} findings`, old: kindsOf(a), new: kindsOf(b) },
    ];
    // A check that was not made on one side has found nothing there, and on neither side is no difference.
    const made = [a, b].filter(wasMade).length;
    return changes.filter(
      ({ part, ...each }) => each.old !== each.new && made >= (part === 'status' ? 1 : 2),
    );
  });
}

const wasMade = (verdict: VerdictRecord | undefined): boolean =>
  verdict !== undefined && verdict.status !== 'not-tested';

const kindsOf = (verdict: VerdictRecord | undefined): string | undefined =>
  [...new Set(verdict?.findings.map(({ facts }) => facts.kind))].sort().join(' ') || undefined;

/** Pairs by key, in the order of the newer, then what only the older has. */
function both<Item>(
  old: readonly Item[],
  now: readonly Item[],
  key: (item: Item) => string,
): readonly (readonly [Item | undefined, Item | undefined])[] {
  const before = new Map(old.map((each) => [key(each), each]));
  const after = new Map(now.map((each) => [key(each), each]));
  return [...new Set([...after.keys(), ...before.keys()])].map((each) => [before.get(each), after.get(each)]);
}
