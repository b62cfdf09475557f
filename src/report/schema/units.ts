import { z } from 'zod';
import type { Millis } from '../../model/units.ts';

/** Milliseconds in a record; the brand comes back with the reading of it. */
export const time = z.number() as unknown as z.ZodType<Millis>;
