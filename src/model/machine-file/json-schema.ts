import { z } from 'zod';
import { axisLetters, axisShape, joinedShape, singleShape, switchShape, topShape } from './shape.ts';

const name = z.string().regex(/^[a-z0-9-]{1,24}$/);

const duty = { duty: true } as const;
const single = singleShape.required(duty);
/** The duty stands at the joined input for all its switches, or at each of them. */
const dutyOnce = joinedShape.required(duty).extend({ switches: z.record(name, switchShape) });
const dutyEach = joinedShape.extend({ switches: z.record(name, switchShape.required(duty)) });
const axes = z.partialRecord(z.enum(axisLetters), axisShape.nullable());

const file = topShape
  .extend({
    inputs: z.record(name, z.union([single, dutyOnce, dutyEach])).optional(),
    axes: axes.meta({ description: 'Axes by letter (ISO 841)' }),
  })
  .meta({
    title: 'tellwire machine file',
    description: 'What is left out is unknown. Only machine, axes and the duty of each input must stand.',
  });

/** The machine file as a JSON Schema (draft 2020-12), for editors that complete and check as one types. */
export const machineSchema: Readonly<Record<string, unknown>> = JSON.parse(
  JSON.stringify(z.toJSONSchema(file, { io: 'input' })),
);
