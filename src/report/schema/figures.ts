import { z } from 'zod';
import type { ScaleCause } from '../../model/scale-facts.ts';
import { between, ofAxis, waySchema } from './motion.ts';
import { time } from './units.ts';

const length = z.number();
const count = z.int().nonnegative();

export const repeatSchema = z.strictObject({
  ...ofAxis,
  source: z.enum(['commanded', 'measured']),
  n: count,
  mean: length,
  s: length,
  range: length,
  unidirectional: length,
  definition: z.literal('ISO 230-2 unidirectional: 4 s'),
  unbiased: length.exactOptional(),
  mean95: between.exactOptional(),
  lagOne: z.number().exactOptional(),
  deviation95: between.exactOptional(),
  outlier: z.strictObject({ index: count, value: length }).exactOptional(),
  drift: z.strictObject({ slope: length }).exactOptional(),
  startPoints: count,
  blur: length,
  period: time.exactOptional(),
  periodNeeded: time.exactOptional(),
  countWanders: length.exactOptional(),
  tolerance: length,
  says: z.enum(['within', 'beyond', 'too-coarse', 'too-few']),
  runs: z.array(
    z.strictObject({ place: between, gauge: length.exactOptional(), start: length.exactOptional() }),
  ),
});

const cause = <Kind extends ScaleCause['kind'], Rest extends z.ZodRawShape>(kind: Kind, rest: Rest) =>
  z.strictObject({ kind: z.literal(kind), ...rest });
const taken = { set: z.number(), real: z.number() };

export const scaleCauseSchema = z.discriminatedUnion('kind', [
  cause('microsteps', taken),
  cause('screw-starts', { starts: z.number() }),
  cause('lead', taken),
  cause('diameter-for-radius', {}),
  cause('step-angle', {}),
  cause('inch-for-mm', {}),
  cause('inch-pitch', taken),
  cause('forgotten-pi', {}),
  cause('teeth', taken),
  cause('gear', { numerator: z.number(), denominator: z.number() }),
]);

export const scaleSchema = z.strictObject({
  ...ofAxis,
  runs: z.array(
    z.strictObject({ commanded: length, measured: length, way: waySchema, afterReversal: z.boolean() }),
  ),
  ratio: z.number(),
  doubt: z.number(),
  accepted: z.number(),
  offset: length,
  backlash: length.exactOptional(),
  hasBacklash: z.boolean().exactOptional(),
  byWay: z.strictObject({ positive: z.number(), negative: z.number() }).exactOptional(),
  waysDiffer: z.boolean().exactOptional(),
  worst: length,
  says: z.enum(['true', 'off', 'too-coarse']),
  causes: z.array(scaleCauseSchema),
  steps: z.number().exactOptional(),
  correctedSteps: z.number().exactOptional(),
});
