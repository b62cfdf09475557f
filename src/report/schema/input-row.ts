import { z } from 'zod';

const text = z.string();

/**
 * One switch. What the file declares and what was found stand apart and are never mixed; an absent field is one that nobody
 * declared, or that nobody found out.
 */
export const inputRowSchema = z.strictObject({
  subject: text,
  input: text,
  declared: z.strictObject({
    duty: z.array(z.enum(['home', 'limit', 'probe', 'door', 'stop'])),
    axis: text.exactOptional(),
    end: text.exactOptional(),
    side: text.exactOptional(),
    place: text.exactOptional(),
    motor: z.int().exactOptional(),
    contact: text.exactOptional(),
    sensor: text.exactOptional(),
    circuit: text.exactOptional(),
    voltage: text.exactOptional(),
    polarity: text.exactOptional(),
    terminal: text.exactOptional(),
    connector: text.exactOptional(),
    reach: text,
    overtravel: z.number().exactOptional(),
    /** The other switches on the same input, and how they are joined. */
    sharedWith: z.array(text),
    joined: z.enum(['single', 'series', 'parallel']),
  }),
  found: z.strictObject({
    contact: text.exactOptional(),
    answersOn: text.exactOptional(),
    /** It was pressed and no input answered. */
    noAnswer: z.literal(true).exactOptional(),
    restLevel: z.enum(['H', 'L']).exactOptional(),
    restActive: z.enum(['1', '0']).exactOptional(),
    polarity: z.enum(['right', 'reversed']).exactOptional(),
    breakNoticed: z.boolean().exactOptional(),
  }),
});
export type InputRow = z.infer<typeof inputRowSchema>;
