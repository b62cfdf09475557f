import { exactly, type Interval } from '../motion/interval.ts';
import { usualPeriod } from '../motion/jumps.ts';
import type { Motion } from '../motion/motion.ts';
import { accelerationOf } from '../motion/ramp.ts';
import type { Leg } from './legs.ts';

/** A bound this many times the other says nothing: the reports are too far apart to show the ramps. */
const widest = 10;

/**
 * The acceleration that one way from rest to rest shows, mm/s², taking both its ramps to be alike; undefined where the reports are too far apart to show them. Its
 * beginning and its end each lie a report on either side of where they were seen.
 */
export function legAcceleration({ samples }: Motion, { at, distance, speed }: Leg): Interval | undefined {
  if (!speed) return undefined;
  const doubt = (2 * usualPeriod(samples)) / 1000;
  const lasted = (at.high - at.low) / 1000;
  const fast = [Math.abs(speed.low), Math.abs(speed.high)];
  const shown = accelerationOf(
    distance,
    { low: lasted - doubt, high: lasted + doubt },
    speed.low * speed.high > 0 ? { low: Math.min(...fast), high: Math.max(...fast) } : exactly(0),
  );
  return shown && shown.high <= shown.low * widest ? shown : undefined;
}
