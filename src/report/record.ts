import { z } from 'zod';
import { findingKinds } from '../model/finding.ts';
import { inputRowSchema } from './schema/input-row.ts';
import { askRecordSchema, sentSchema, sessionSchema, streamSchema } from './schema/session.ts';
import { checkSchema, statusSchema, verdictSchema } from './schema/verdict.ts';
import { wiringRecordSchema } from './schema/wiring.ts';
import { shown } from './shown.ts';

const text = z.string();
const texts = z.array(text);

const axisSchema = z.strictObject({
  letter: text,
  kind: z.enum(['linear', 'rotary']),
  motors: z.int(),
  travel: z.number().exactOptional(),
  homes: text.exactOptional(),
  positive: text.exactOptional(),
  moves: text.exactOptional(),
});

const untestedSchema = z.strictObject({
  /** Absent: a function that no check of ours can show. */
  check: checkSchema.exactOptional(),
  subject: text,
  what: text,
  reason: text,
  consequence: text,
});
export type Untested = z.infer<typeof untestedSchema>;

const changeSchema = z.strictObject({
  subject: text,
  /** `cause`: what to change is known only when the cause is found, or was found by a search. */
  what: z.enum(['setting', 'wire', 'mechanics', 'cause']),
  from: text,
  to: text,
  why: text,
  retest: text,
});
export type ChangeRecord = z.infer<typeof changeSchema>;

const outSchema = z.strictObject({ subject: text, at: z.enum(['switch', 'controller']) });

/** The report as data: the JSON report is this, and every other format reads nothing else. */
export const reportRecordSchema = z.strictObject({
  schemaVersion: z.literal(1),
  tool: z.strictObject({ version: text, rules: z.int() }),
  session: sessionSchema,
  machine: z.strictObject({
    name: text,
    units: z.enum(['mm', 'inch']),
    stand: text.exactOptional(),
    polarity: z.enum(['each', 'one for all', 'unknown']),
    axes: z.array(axisSchema),
  }),
  /** The worst line of the record; it governs the first page. */
  worst: statusSchema,
  inputMap: z.array(inputRowSchema),
  /** Each known circuit of the machine, computed; nothing in it was measured. */
  wirings: z.array(wiringRecordSchema),
  verdicts: z.array(verdictSchema),
  /** Each kind of finding that occurs, explained once. */
  explained: z.array(z.strictObject({ kind: z.enum(findingKinds), title: text, means: text, next: texts })),
  untested: z.array(untestedSchema),
  cautions: texts,
  limitations: texts,
  changes: z.array(changeSchema),
  /** What was pulled and not seen to go back; must be empty. */
  stillOut: z.array(outSchema),
  retest: texts,
  stream: streamSchema,
  sent: z.array(sentSchema),
  dialogue: z.array(askRecordSchema),
});
export type ReportRecord = z.infer<typeof reportRecordSchema>;

/** Reads a saved JSON report, which may come from anywhere; throws a ZodError that names what does not fit. */
export const parseRecord = (json: string): ReportRecord => reportRecordSchema.parse(shown(JSON.parse(json)));
