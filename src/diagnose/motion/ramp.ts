import type { Interval } from './interval.ts';

/** A move from rest to rest: up one ramp, along at a constant speed where there is room, down another. Lengths mm, times s. */
export interface Move {
  readonly peak: number;
  readonly seconds: number;
  readonly shape: 'trapezoid' | 'triangle';
}

/**
 * Peak speed and time of a move over `distance` mm with speed limit `speed` mm/s and ramps `up` and `down` mm/s². Too short for
 * its speed, it is a triangle that peaks at √(2·a·b·D/(a+b)) (v²/2a + v²/2b = D solved for v). Throws on anything not above zero.
 */
export function moveOver(distance: number, speed: number, up: number, down: number = up): Move {
  for (const each of [distance, speed, up, down])
    if (!(each > 0)) throw new RangeError(`A move needs distance, speed and ramps above zero, not ${each}.`);
  const rampsAt = (v: number) => v ** 2 / (2 * up) + v ** 2 / (2 * down);
  const timeOfRamps = (v: number) => v / up + v / down;
  if (rampsAt(speed) > distance) {
    const peak = Math.sqrt((2 * up * down * distance) / (up + down));
    return { peak, seconds: timeOfRamps(peak), shape: 'triangle' };
  }
  return {
    peak: speed,
    seconds: timeOfRamps(speed) + (distance - rampsAt(speed)) / speed,
    shape: 'trapezoid',
  };
}

/** The speed, mm/s, that a move over `distance` mm in `seconds` must reach, with ramps `up` and `down` mm/s²; undefined where it cannot be done. */
export function peakNeeded(
  distance: number,
  seconds: number,
  up: number,
  down: number = up,
): number | undefined {
  // D = v·T − (v²/2)(1/a + 1/b): the slower of the two solutions.
  const k = (1 / up + 1 / down) / 2;
  const root = seconds ** 2 - 4 * k * distance;
  return root < 0 ? undefined : (seconds - Math.sqrt(root)) / (2 * k);
}

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
