import { z } from 'zod';
import type { Ask } from '../model/ask.ts';
import type { Verdict } from '../model/verdict.ts';

/**
 * What was asked, answered and found, one JSON object a line. `at` is the session's clock in ms, `lines` how many entries the
 * capture held at that moment: the capture is on disk up to there before the line is written.
 */
export type JournalRecord =
  | AskPut
  | AnswerGiven
  | AskEnded
  | DangerTold
  | OwnLineSent
  | VerdictGiven
  | Begun
  | Resumed;

interface Stamp {
  readonly at: number;
  readonly lines: number;
}

export interface AskPut extends Stamp {
  readonly kind: 'ask';
  readonly id: number;
  readonly again?: number | undefined;
  readonly ask: Ask;
  /** The very words shown. */
  readonly text: string;
  readonly cautions: readonly string[];
}

/** An answer as it came; `ignored` where its ask had already ended. */
export interface AnswerGiven extends Stamp {
  readonly kind: 'answer';
  readonly id: number;
  readonly answer: string;
  readonly value?: number | undefined;
  readonly ignored?: boolean | undefined;
}

export interface AskEnded extends Stamp {
  readonly kind: 'ended';
  readonly id: number;
  readonly by: 'seen' | 'answer' | 'time' | 'gap';
  readonly answer?: string | undefined;
  readonly value?: number | undefined;
  readonly answeredAt?: number | undefined;
}

/** What was shown and sounded while an axis moved. The judges find it again by themselves. */
export interface DangerTold extends Stamp {
  readonly kind: 'danger';
  readonly id: number;
  readonly axis: string;
  readonly finding: string;
  readonly text: string;
}

/** A line that the person typed, agreed to and had written while that ask was open; `text` with its end. It stands in the capture too. */
export interface OwnLineSent extends Stamp {
  readonly kind: 'own-line';
  readonly id: number;
  readonly text: string;
}

export interface VerdictGiven extends Stamp {
  readonly kind: 'verdict';
  readonly verdict: Omit<Verdict, 'traces'> & {
    readonly spans: readonly { readonly from: number; readonly to: number }[];
  };
}

/** The stream was there and the checks began: some come to their verdict without an ask. */
export interface Begun extends Stamp {
  readonly kind: 'begun';
}

export interface Resumed extends Stamp {
  readonly kind: 'resumed';
}

const stamp = { at: z.number(), lines: z.int().nonnegative() };
const recordSchema = z.discriminatedUnion('kind', [
  z.looseObject({
    kind: z.literal('ask'),
    ...stamp,
    id: z.int(),
    ask: z.looseObject({ action: z.string(), check: z.string() }),
    text: z.string(),
    cautions: z.array(z.string()),
  }),
  z.looseObject({ kind: z.literal('answer'), ...stamp, id: z.int(), answer: z.string() }),
  z.looseObject({
    kind: z.literal('ended'),
    ...stamp,
    id: z.int(),
    by: z.enum(['seen', 'answer', 'time', 'gap']),
  }),
  z.looseObject({
    kind: z.literal('verdict'),
    ...stamp,
    verdict: z.looseObject({ check: z.string(), subject: z.string() }),
  }),
  z.looseObject({ kind: z.literal('danger'), ...stamp, id: z.int(), axis: z.string(), finding: z.string() }),
  z.looseObject({ kind: z.literal('own-line'), ...stamp, id: z.int(), text: z.string() }),
  z.looseObject({ kind: z.literal('begun'), ...stamp }),
  z.looseObject({ kind: z.literal('resumed'), ...stamp }),
]);

export const encodeRecord = (record: JournalRecord): string => `${JSON.stringify(record)}\n`;

export function verdictRecord({ traces, ...verdict }: Verdict, stampOf: Stamp): VerdictGiven {
  return {
    kind: 'verdict',
    ...stampOf,
    verdict: { ...verdict, spans: traces.map(({ from, to }) => ({ from, to })) },
  };
}

export interface ReadJournal {
  readonly records: readonly JournalRecord[];
  /** Length in bytes up to and with each record, and of all of them. */
  readonly ends: readonly number[];
  readonly bytes: number;
}

/**
 * The sound records of a journal: reading ends at a torn or damaged line, and at a record that speaks of more capture entries
 * than there are, where their number is known already.
 */
export function readJournal(text: string, captureLines = Infinity): ReadJournal {
  const records: JournalRecord[] = [];
  const ends: number[] = [];
  let bytes = 0;
  for (let start = 0, end = text.indexOf('\n'); end >= 0; start = end + 1, end = text.indexOf('\n', start)) {
    const record = parseRecord(text.slice(start, end));
    if (!record || record.lines > captureLines) break;
    bytes += Buffer.byteLength(text.slice(start, end + 1));
    records.push(record);
    ends.push(bytes);
  }
  return { records, ends, bytes };
}

function parseRecord(line: string): JournalRecord | undefined {
  try {
    const parsed = recordSchema.safeParse(JSON.parse(line));
    // The schema checks what the retracing relies on; the rest of an ask is compared with the course's own.
    return parsed.success ? (parsed.data as unknown as JournalRecord) : undefined;
  } catch {
    return undefined;
  }
}
