import { z } from 'zod';
import { allowedWords, oneOf } from '../../../model/machine-file/fields.ts';

/** Values of a description are text as it stands in the file: "01" is not 1. */
const text = (longest: number, allowed: string) => {
  const schema = z.string().min(1).max(longest);
  allowedWords.add(schema, { allowed });
  return schema;
};
const numeral = (least: number, most: number, allowed: string, form = /^\d{1,9}$/) => {
  const schema = z
    .string()
    .regex(form)
    .transform(Number)
    .refine((value) => value >= least && value <= most);
  allowedWords.add(schema, { allowed });
  return schema;
};
const list = () => {
  const schema = z.array(z.string().max(200)).max(64);
  allowedWords.add(schema, { allowed: 'a list of what may stand there, as in ["1"]' });
  return schema;
};

const lines = z.strictObject({
  count: numeral(0, 8192, 'how many values such a line holds').optional(),
  begins: text(120, "the name of such a line's first value").optional(),
  has: text(120, 'the name of a value that such a line holds').optional(),
  values: z.record(z.string(), z.string().max(200)).optional(),
});
allowedWords.add(lines, { allowed: 'count, begins, has, values, as in { values: { "0": report } }' });

/** Where in a line: the value's name, and what of it. */
const spot = {
  field: text(120, 'the name of a value, as tellwire check --capture shows it'),
  lines: lines.optional(),
  bit: numeral(0, 63, 'which bit, the lowest is 0').optional(),
  base: oneOf(['2', '10', '16'], 'The base the number is written in').optional(),
  character: numeral(0, 255, 'which character, the first is 0').optional(),
  length: numeral(1, 256, 'how many characters there are').optional(),
  word: text(96, 'the word that is there or not').optional(),
  letter: text(1, 'the letter that is there or not').optional(),
};

export const inputShape = z.strictObject({
  ...spot,
  shows: oneOf(
    ['active', 'level'],
    'The state after the polarity setting, or the electrical level',
  ).optional(),
  active: list().optional(),
  inactive: list().optional(),
});
export const axisShape = z.strictObject({
  field: spot.field,
  lines: spot.lines,
  scale: numeral(
    1e-9,
    1e9,
    'mm (or degrees) for one of what is counted',
    /^\d{1,9}(\.\d{1,12})?$/,
  ).optional(),
});
export const activityShape = z.strictObject({
  ...spot,
  still: list().optional(),
  moving: list().optional(),
  homing: list().optional(),
  fault: list().optional(),
});
/** Longest request, bytes. */
export const longestRequest = 32;
const send = z.string().regex(/^[\x00-\xff]{1,32}$/);
allowedWords.add(send, { allowed: `1 to ${longestRequest} bytes in double quotes, as in "tell\\n"` });
export const requestShape = z.strictObject({
  send,
  every: numeral(20, 600_000, 'ms between two, 20 at least'),
});
export const topShape = z.strictObject({
  stream: text(200, 'a name for the stream'),
  agree: oneOf(['1', '2'], 'How many reports must agree before a change counts').optional(),
});

export type SpotFields = z.output<z.ZodObject<typeof spot>>;
