import { z } from 'zod';
import {
  everyCheck,
  evidenceLevels,
  type Facts,
  type Missing,
  statuses,
  type Trace,
} from '../../model/verdict.ts';
import { missingWords } from '../../words/missing-words.ts';
import { envelopeSchema, programSchema, stoppingSchema } from './bounds.ts';
import { causeSchema, possibleSchema } from './cause.ts';
import { repeatSchema, scaleSchema } from './figures.ts';
import { findingSchema } from './finding.ts';
import { frameSchema, homingSchema, trackSchema } from './motion.ts';
import { time } from './units.ts';

const level = z.enum(['H', 'L', '?']);
const active = z.enum(['1', '0', '?']);
const count = z.int().nonnegative();

export const checkSchema = z.enum(everyCheck);
export const statusSchema = z.enum(statuses);

/** A fact without a line here does not compile. */
const facts = z.strictObject({
  resolution: z
    .strictObject({
      reports: count,
      median: time,
      longest: time,
      surePulse: time,
      lost: count,
      unreadable: count,
    })
    .exactOptional(),
  rest: z.strictObject({ level, active, quietFor: time, edges: count }).exactOptional(),
  presses: z
    .strictObject({
      asked: count,
      answered: count,
      elsewhere: count.exactOptional(),
      missShareAtMost95: z.number().exactOptional(),
    })
    .exactOptional(),
  soak: z
    .strictObject({ trips: count, watched: time, perHourAtMost95: z.number().exactOptional() })
    .exactOptional(),
  row: z.strictObject({ bits: z.string(), by: z.enum(['active', 'change']) }).exactOptional(),
  contactFound: z.enum(['normally open', 'normally closed']).exactOptional(),
  answeredBy: z.string().exactOptional(),
  possible: possibleSchema.exactOptional(),
  unpluggedAt: z.enum(['switch', 'controller']).exactOptional(),
  controllerActed: z.boolean().exactOptional(),
  powerShownBy: z.enum(['knob-free', 'lamp', 'meter']).exactOptional(),
  tracks: z.array(trackSchema).exactOptional(),
  frame: frameSchema.exactOptional(),
  homing: homingSchema.exactOptional(),
  repeat: repeatSchema.exactOptional(),
  stopping: stoppingSchema.exactOptional(),
  envelope: envelopeSchema.exactOptional(),
  program: programSchema.exactOptional(),
  scale: scaleSchema.exactOptional(),
  cause: causeSchema.exactOptional(),
} satisfies Record<keyof Facts, z.ZodType>) as unknown as z.ZodType<Facts>;

/** Points carry the controller clock in ms from the first point; `from` and `to` the host clock. */
const trace = z.strictObject({
  label: z.enum(['rest', 'press', 'out', 'press-while-out', 'press-after-replug', 'stop', 'unlatch']),
  from: time,
  to: time,
  samples: count,
  signals: z.array(
    z.strictObject({
      input: z.string(),
      points: z.array(z.strictObject({ t: time, level, active })),
    }),
  ),
}) as unknown as z.ZodType<Trace>;

const missing = z.enum(Object.keys(missingWords) as [Missing, ...Missing[]]);

/** A verdict with what is said of it beside its facts, so that a reader of the JSON alone is told the same. */
export const verdictSchema = z.strictObject({
  check: checkSchema,
  subject: z.string(),
  status: statusSchema,
  evidence: z.enum(evidenceLevels),
  missing: z.array(missing),
  facts,
  findings: z.array(
    z.strictObject({
      weight: z.enum(['fault', 'limitation', 'note']),
      title: z.string(),
      said: z.string(),
      facts: findingSchema,
    }),
  ),
  says: z.array(z.string()),
  traces: z.array(trace),
});
export type VerdictRecord = z.infer<typeof verdictSchema>;
