import { z } from 'zod';
import { homingParts } from '../../model/homing-facts.ts';
import { time } from './units.ts';

const axis = z.enum(['X', 'Y', 'Z', 'A', 'B', 'C', 'U', 'V', 'W']);
const unit = z.enum(['mm', 'degrees']);
const way = z.union([z.literal(1), z.literal(-1)]);
const linear = z.enum(['X', 'Y', 'Z']);
const name = z.string();
const count = z.int().nonnegative();
const length = z.number();

/** The axis a fact is about, and what its lengths count in. */
export const ofAxis = { axis, unit };
export const between = z.strictObject({ low: z.number(), high: z.number() });
export const waySchema = way;

const point = z.strictObject({ t: time, position: length, apart: z.literal(true).exactOptional() });

export const trackSchema = z.strictObject({
  ...ofAxis,
  label: z.enum(['seek', 'homing', 'repeat', 'stopping', 'move']),
  from: time,
  to: time,
  samples: count,
  points: z.array(point),
  trips: z.array(
    z.strictObject({
      input: name,
      to: z.enum(['operated', 'free']),
      t: between,
      position: between.exactOptional(),
      wanted: z.boolean(),
    }),
  ),
  reversals: z.array(point),
  expected: way.exactOptional(),
  zeroSet: z.strictObject({ t: time, before: length, after: length }).exactOptional(),
  alarm: z.strictObject({ t: time }).exactOptional(),
});

export const frameSchema = z.strictObject({
  ways: z.array(
    z.strictObject({
      commanded: linear,
      axis: linear,
      sign: way,
      evidence: z.enum(['told', 'repeated']),
    }),
  ),
  says: z.enum(['true', 'turned', 'mirrored', 'too-few-axes', 'same-axis-twice', 'leaves-the-plane']),
  determinant: way.exactOptional(),
});

const speed = z.strictObject({ value: z.number(), low: z.number(), high: z.number() });

export const homingSchema = z.strictObject({
  ...ofAxis,
  input: name,
  cycles: count,
  seen: z.array(z.enum(homingParts)),
  way: way.exactOptional(),
  approachSpeed: speed.exactOptional(),
  slowSpeed: speed.exactOptional(),
  acceleration: between.exactOptional(),
  approachWay: between.exactOptional(),
  trip: between.exactOptional(),
  slowTrip: between.exactOptional(),
  stopDistance: between.exactOptional(),
  backOff: between.exactOptional(),
  release: between.exactOptional(),
  differential: between.exactOptional(),
  sideOffset: between.exactOptional(),
  squareness: between.exactOptional(),
  zero: z.enum(['jump', 'agrees', 'not-seen']),
  shift: between.exactOptional(),
  reaction: z.enum(['acted', 'not-acted-on', 'not-tested']),
  order: z.array(axis).exactOptional(),
});
