import { z } from 'zod';
import { tellings } from '../model/cause-facts.ts';
import { deedNames } from '../model/deed-names.ts';
import { everyOutcome } from '../model/every-outcome.ts';

/** How a search for a cause is led, as session.json holds it. */
export const searchOrderSchema = z.object({
  subject: z.string(),
  history: z.enum(['fresh', 'worked']),
  stopProved: z.boolean(),
  /** What an earlier session had shown. */
  earlier: z.array(z.object({ deed: z.enum(deedNames), outcome: z.enum(everyOutcome) })),
  told: z.enum(tellings).exactOptional(),
  /** The other input that answered there. */
  beside: z.string().exactOptional(),
});
