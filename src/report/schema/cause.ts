import { z } from 'zod';
import { tellings } from '../../model/cause-facts.ts';
import { deedNames } from '../../model/deed-names.ts';
import { everyOutcome } from '../../model/every-outcome.ts';
import { faultNames } from '../../model/fault-names.ts';
import { everyCheck, type Missing } from '../../model/verdict.ts';
import { wiringNames } from '../../model/wiring-names.ts';
import { missingWords } from '../../words/missing-words.ts';

const fault = z.enum(faultNames);
const deed = z.enum(deedNames);
const missing = z.enum(Object.keys(missingWords) as [Missing, ...Missing[]]);

export const causeSchema = z.strictObject({
  causes: z.array(z.array(fault)),
  beside: z.string().exactOptional(),
  share: z.number(),
  ended: z.enum(['named', 'inseparable', 'stopped']),
  wirings: z.array(
    z.strictObject({
      name: z.enum(wiringNames),
      contact: z.enum(['normally open', 'normally closed']),
    }),
  ),
  assumed: z.array(z.enum(['circuit', 'contact'])),
  history: z.enum(['fresh', 'worked']),
  told: z.enum(tellings).exactOptional(),
  evidence: z.array(
    z.strictObject({
      deed,
      outcome: z.enum(everyOutcome),
      value: z.number().exactOptional(),
      speaks: z.enum(['for', 'against', 'neither']),
      earlier: z.literal(true).exactOptional(),
    }),
  ),
  notDone: z.array(z.strictObject({ deed, why: missing })),
  ruledOut: z.array(fault),
  retest: z.array(z.enum(everyCheck)),
});

export const possibleSchema = z.strictObject({
  causes: z.array(z.array(fault)),
  others: z.int().nonnegative(),
  assumed: z.array(z.enum(['circuit', 'contact'])),
});
