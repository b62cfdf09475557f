import { z } from 'zod';
import { faultNames } from '../../model/fault-names.ts';
import type { Share } from '../../model/units.ts';
import { inputFamilies, wiringNames } from '../../model/wiring-names.ts';

const text = z.string();
const number = z.number();
const part = z.number() as unknown as z.ZodType<Share>;
/** An absent number is a part left out, a voltage that floats, or a limit that is nowhere: JSON knows no infinity. */
const unlessNowhere = number.exactOptional();
const read = z.enum(['active', 'inactive', 'uncertain', 'unsteady']);
const state = z.enum(['rest', 'pressed', 'broken']);

const wiring = z.strictObject({
  name: z.enum(wiringNames),
  contact: z.enum(['normally closed', 'normally open']),
  joins: z.enum(['0 V', '+']),
  device: z.enum([
    'contact',
    'stop contact',
    'door contact',
    'npn',
    'pnp',
    'two-wire',
    'hall',
    'optical',
    'touch plate',
    'touch probe',
  ]),
  stage: z.enum(['pull-up', 'pull-down', 'divider', 'fed optocoupler', 'drawn optocoupler', 'window']),
  joined: z.enum(['single', 'series', 'parallel']),
  family: z.enum(inputFamilies),
  values: z.array(
    z.strictObject({
      name: text,
      nominal: unlessNowhere,
      low: unlessNowhere,
      high: unlessNowhere,
      given: z.boolean(),
    }),
  ),
  unused: z.array(text),
});

const stateSchema = z.strictObject({
  state,
  level: z.enum(['conducting', 'open', 'uncertain', 'floats', 'shorted', 'cut', 'flickers']),
  reported: read,
  volts: z.array(z.strictObject({ node: text, volts: unlessNowhere })),
  currents: z.array(z.strictObject({ part: text, amps: number, watts: number })),
  closed: z.boolean(),
  /** What boards drawn from the tolerances read, as shares, and whether every corner of them reads alike. */
  boards: z.int(),
  readings: z.array(z.strictObject({ reported: read, share: number })),
  sureAtCorners: z.boolean(),
});

const coverage = z.strictObject({
  dangerous: number,
  atOnce: part,
  byPress: part,
  byUnplugging: part,
});

/** One wiring of the machine, computed, with the switches that have it. */
export const wiringRecordSchema = z.strictObject({
  switches: z.array(z.strictObject({ subject: text, contactFrom: z.enum(['found', 'declared', 'assumed']) })),
  wiring,
  works: z.boolean(),
  states: z.array(stateSchema),
  margins: z.strictObject({
    atRest: unlessNowhere,
    pressed: unlessNowhere,
    wettingAmps: number,
    highestContactOhms: unlessNowhere,
    lowestLeakOhms: unlessNowhere,
    shortestPulse: unlessNowhere,
    longestIgnored: unlessNowhere,
  }),
  faults: z.array(
    z.strictObject({
      fault: z.enum(faultNames),
      rest: read,
      pressed: read,
      unplugged: read,
      found: z.enum(['at once', 'next press', 'unplugging', 'never']),
      dangerous: z.boolean(),
      besides: z.boolean(),
      likelihood: z.strictObject({ fresh: number, worked: number }),
    }),
  ),
  coverage: z.strictObject({ fresh: coverage, worked: coverage }),
});
export type WiringRecord = z.infer<typeof wiringRecordSchema>;
