import { z } from 'zod';
import { allowedQuantity, type Measure, type MeasureName, measures, quantityOf } from './quantity.ts';

/** What may stand in a field, in words; kept beside the schema so that the two cannot part. */
export interface AllowedWords {
  readonly allowed: string;
  readonly oneOf?: readonly string[];
  /** The unit most often meant where a number stands without one. */
  readonly unit?: string;
  readonly units?: readonly string[];
}
export const allowedWords = z.registry<AllowedWords>();

/** One of a few words. */
export const oneOf = <const Words extends readonly [string, ...string[]]>(words: Words, meaning: string) => {
  const schema = z.enum(words).meta({ description: meaning });
  allowedWords.add(schema, { allowed: words.join(', '), oneOf: words });
  return schema;
};

/** A line of the person's own words; never empty. */
export const words = (longest: number, meaning: string) => {
  const schema = z
    .string()
    .trim()
    .min(1)
    .max(longest)
    // A terminal called 7 is a number to an editor and text to us.
    .meta({ description: meaning, type: ['string', 'number'] });
  allowedWords.add(schema, { allowed: `text of 1 to ${longest} characters` });
  return schema;
};

/** The text form of a measure for editors; a reading goes by `quantityOf`, which also knows the signs for ohm and micro. */
function editorForm({ units, bare }: Measure): { type: string[]; pattern: string } {
  const names = Object.keys(units).join('|').replaceAll('/', '\\/');
  return {
    type: bare ? ['number', 'string'] : ['string'],
    pattern: `^[-+]?\\d+(\\.\\d+)?\\s*(${names})${bare ? '?' : ''}$`,
  };
}

/** A number with a unit; a bare number only where the machine's unit of length is meant. */
export const quantity = (name: MeasureName, meaning: string) => {
  const measure: Measure = measures[name];
  const written = z.union([z.number(), z.string()]);
  const schema = written
    .refine((value) => quantityOf(measure, value) !== undefined)
    .meta({
      description: `${meaning}: ${allowedQuantity(measure)}`,
      examples: [measure.example],
      anyOf: undefined,
      ...editorForm(measure),
    });
  const units = Object.keys(measure.units);
  const [unit] = units;
  const allowed = allowedQuantity(measure);
  allowedWords.add(schema, { allowed, units, ...(unit && !measure.bare ? { unit } : {}) });
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
