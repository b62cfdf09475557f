import { z } from 'zod';
import { allowedQuantity, type MeasureName, measures, quantityOf } from './quantity.ts';

/** What may stand in a field, in words; kept beside the schema so that the two cannot part. */
export const allowedWords = z.registry<{ allowed: string; oneOf?: readonly string[] }>();

/** One of a few words. */
export const oneOf = <const Words extends readonly [string, ...string[]]>(words: Words, meaning: string) => {
  const schema = z.enum(words).meta({ description: meaning });
  allowedWords.add(schema, { allowed: words.join(', '), oneOf: words });
  return schema;
};

/** A line of the person's own words; never empty. */
export const words = (longest: number, meaning: string) => {
  const schema = z.string().trim().min(1).max(longest).meta({ description: meaning });
  allowedWords.add(schema, { allowed: `text of 1 to ${longest} characters` });
  return schema;
};

const escapedUnit = (unit: string): string => unit.replace('/', '\\/');

/** The text form of a measure for editors; a reading goes by `quantityOf`, which also knows the signs for ohm and micro. */
const pattern = (name: MeasureName): RegExp =>
  new RegExp(`^[-+]?\\d+(\\.\\d+)?\\s*(${Object.keys(measures[name].units).map(escapedUnit).join('|')})$`);

/** A number with a unit; a bare number only where the machine's unit of length is meant. */
export const quantity = (name: MeasureName, meaning: string) => {
  const measure = measures[name];
  const written = z.union([z.number(), z.string()]);
  const schema = written
    .refine((value) => quantityOf(measure, value) !== undefined)
    .meta({
      description: `${meaning}: ${allowedQuantity(measure)}`,
      examples: [measure.example],
      ...(measure.bare ? {} : { type: 'string', anyOf: undefined, pattern: pattern(name).source }),
    });
  allowedWords.add(schema, { allowed: allowedQuantity(measure) });
  return schema;
};

/** Two lengths, the lower first. */
export const pair = (meaning: string) => {
  const end = quantity('length', 'one end');
  const schema = z.tuple([end, end]).meta({ description: meaning });
  allowedWords.add(schema, { allowed: 'two lengths, the lower first, as in [2, 415]' });
  return schema;
};

export const counted = (most: number, meaning: string) => {
  const schema = z.number().int().min(1).max(most).meta({ description: meaning });
  allowedWords.add(schema, { allowed: `a whole number from 1 to ${most}` });
  return schema;
};
