import { z } from 'zod';
import { programDoubts } from '../../model/envelope-facts.ts';
import { between, ofAxis } from './motion.ts';

const length = z.number();
const name = z.string();
const count = z.int().nonnegative();

const end = z.strictObject({
  stop: length.exactOptional(),
  stopFrom: z.enum(['configured', 'told', 'measured']).exactOptional(),
  trip: length.exactOptional(),
  tripFrom: z.enum(['configured', 'commanded']).exactOptional(),
  input: name.exactOptional(),
});

export const envelopeSchema = z.strictObject({
  ...ofAxis,
  ends: z.strictObject({ negative: end, positive: end }),
  homes: z.enum(['negative', 'positive']).exactOptional(),
  homeValue: length.exactOptional(),
  backOff: length.exactOptional(),
  soft: z.tuple([length, length]).exactOptional(),
  softMargin: length,
  roomNeeded: length.exactOptional(),
  usable: length.exactOptional(),
  origins: z.array(
    z.strictObject({ system: name, at: length, active: z.boolean(), shift: length.exactOptional() }),
  ),
  parts: z.array(
    z.strictObject({ system: name, low: length, high: length, lowLine: count, highLine: count }),
  ),
});

export const programSchema = z.strictObject({
  lines: count,
  motions: count,
  unitsAssumed: z.boolean(),
  usesToolLength: z.boolean(),
  shiftsTemporarily: z.boolean(),
  notUnderstood: z.array(z.strictObject({ line: count, text: name, why: z.enum(programDoubts) })),
});

export const stoppingSchema = z.strictObject({
  ...ofAxis,
  speed: z.number().exactOptional(),
  acceleration: z.number().exactOptional(),
  reaction: z.number().exactOptional(),
  computed: length.exactOptional(),
  observed: between.exactOptional(),
  stops: count,
  worseThanDeclared: z.boolean(),
  overtravel: length.exactOptional(),
  toHardStop: length.exactOptional(),
  room: z.strictObject({ mm: length, from: z.enum(['overtravel', 'hard stop']) }).exactOptional(),
  says: z.enum(['fits', 'overruns', 'unknown']),
  over: length.exactOptional(),
  fastest: z.number().exactOptional(),
  halved: length.exactOptional(),
});
