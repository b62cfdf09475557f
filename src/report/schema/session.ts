import { z } from 'zod';
import type { Answer, EndedBy } from '../../model/ask.ts';
import type { UnreadableWhy } from '../../model/reading.ts';
import type { StreamFacts } from '../../model/session-facts.ts';
import { answerWords } from '../../words/answer-words.ts';
import { unreadableWords } from '../../words/stream-words.ts';
import { time } from './units.ts';
import { checkSchema } from './verdict.ts';

const count = z.int().nonnegative();
const by = z.enum(['seen', 'answer', 'time', 'gap']) satisfies z.ZodType<EndedBy>;
const answer = z.enum(Object.keys(answerWords) as [Answer, ...Answer[]]);
const why = z.enum(Object.keys(unreadableWords) as [UnreadableWhy, ...UnreadableWhy[]]);

export const sessionSchema = z.strictObject({
  started: z.string(),
  port: z.string(),
  stopped: z.boolean(),
  exit: z.union([z.literal(0), z.literal(1), z.literal(2)]),
  asked: z.strictObject({
    checks: z.array(checkSchema),
    presses: count,
    rest: z.number(),
    only: z.array(z.string()).exactOptional(),
  }),
  machineHash: z.string(),
  captureHash: z.string(),
});

/** One ask with the very words shown. */
export const askRecordSchema = z.strictObject({
  id: z.int(),
  again: z.int().exactOptional(),
  check: z.union([checkSchema, z.literal('resume'), z.literal('learn')]),
  subject: z.string().exactOptional(),
  text: z.string(),
  cautions: z.array(z.string()),
  from: time,
  to: time.exactOptional(),
  by: by.exactOptional(),
  answer: answer.exactOptional(),
});

export const streamSchema = z.strictObject({
  inputs: z.array(z.string()),
  axes: z.array(z.string()),
  lines: count,
  reports: count,
  median: time.exactOptional(),
  longest: time.exactOptional(),
  lost: count,
  gaps: count,
  restarts: count,
  unreadable: z.partialRecord(why, count),
}) as unknown as z.ZodType<StreamFacts>;

/** `own`: the operator typed it and had it sent. */
export const sentSchema = z.strictObject({
  at: time,
  text: z.string(),
  own: z.literal(true).exactOptional(),
});
