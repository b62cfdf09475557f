import { type Mm, mm } from '../../model/units.ts';

/** What an axis needs from the trip of its switch to a standstill. */
export interface Stopping {
  /** mm/s, above zero or zero. */
  readonly speed: number;
  /** mm/s², above zero. */
  readonly acceleration: number;
  /** ms from the contact to the start of braking: filter, scan of the inputs, planning. */
  readonly reaction: number;
}

/**
 * Way from the trip to a standstill, mm: v·t + v²/2a, on at full speed while the controller reacts, then down one even ramp. Throws a
 * RangeError where the acceleration is not above zero or another number is negative.
 */
export function stoppingDistance({ speed, acceleration, reaction }: Stopping): Mm {
  if (!(acceleration > 0) || !(speed >= 0) || !(reaction >= 0))
    throw new RangeError(`No stop follows from ${speed} mm/s, ${acceleration} mm/s2, ${reaction} ms.`);
  return mm((speed * reaction) / 1000 + speed ** 2 / (2 * acceleration));
}

/**
 * The highest speed, mm/s, from which an axis still stops within `room` mm: v·t + v²/2a = s solved for v, v = a(√(t² + 2s/a) − t).
 * Zero where there is no room.
 */
export function fastestThatStops(room: number, acceleration: number, reaction: number): number {
  if (!(acceleration > 0) || !(reaction >= 0))
    throw new RangeError(`No speed follows from ${acceleration} mm/s2, ${reaction} ms.`);
  const seconds = reaction / 1000;
  return room <= 0 ? 0 : acceleration * (Math.sqrt(seconds ** 2 + (2 * room) / acceleration) - seconds);
}
