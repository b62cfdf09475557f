import { type Mm, mm } from '../../model/units.ts';
import type { InputEdge } from '../motion/edges.ts';
import { type Interval, overlaps, spanning } from '../motion/interval.ts';

/**
 * How far the two sides of a beam driven by two motors tripped apart, mm, the second less the first as counted on the axis; undefined where a trip or its place was
 * not seen.
 */
export function sideOffset(
  first: InputEdge | undefined,
  second: InputEdge | undefined,
): Interval<Mm> | undefined {
  if (!first?.where || !second?.where) return undefined;
  return { low: mm(second.where.low - first.where.high), high: mm(second.where.high - first.where.low) };
}

/** Whether an offset certainly moved from one homing to another: steps were lost on one side. */
export const offsetMoved = (before: Interval<Mm>, after: Interval<Mm>): boolean => !overlaps(before, after);

/** What an offset makes of a right angle, degrees: its arc tangent over the distance between the two sides, mm. */
export function squarenessError(offset: Interval<Mm>, between: Mm): Interval {
  if (!(between > 0)) throw new RangeError(`Two sides lie a length above zero apart, not ${between}.`);
  const degrees = (length: number) => (Math.atan2(length, between) * 180) / Math.PI;
  return spanning(degrees(offset.low), degrees(offset.high));
}
