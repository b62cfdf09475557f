import type { Interval } from './interval.ts';

/**
 * Acceleration of a move with two like ramps, mm/s², from its distance, duration and speed, each as well as it is known: T = D/v + v/a.
 * The upper bound is Infinity where the reports are too far apart to show the ramps at all; undefined where the numbers contradict each other.
 */
export function accelerationOf(distance: Interval, seconds: Interval, speed: Interval): Interval | undefined {
  const forRamps = {
    low: seconds.low - distance.high / speed.low,
    high: seconds.high - distance.low / speed.high,
  };
  if (!(speed.low > 0) || forRamps.high <= 0) return undefined;
  return {
    low: speed.low / forRamps.high,
    high: forRamps.low > 0 ? speed.high / forRamps.low : Number.POSITIVE_INFINITY,
  };
}
