import { type Mm, mm } from '../../model/units.ts';
import type { HomingCycle } from '../homing/cycle.ts';
import { difference, exactly, type Interval } from '../motion/interval.ts';

/** One homing with where its switch tripped, the slow approach's trip where there was one, in the frame of the first homing. */
export interface PlacedCycle {
  readonly cycle: HomingCycle;
  readonly place: Interval<Mm>;
}

/**
 * Every homing sets the numbers anew, so that the places of two homings stand in two frames. What each zero shifted by is taken out again; the doubt of a shift is
 * carried on. Cycles without a trip are left out. A hole between two cycles breaks the frame, and what comes after it is left out.
 */
export function placedCycles(cycles: readonly HomingCycle[]): readonly PlacedCycle[] {
  const placed: PlacedCycle[] = [];
  let shifted: Interval<Mm> = exactly(mm(0));
  for (const [at, cycle] of cycles.entries()) {
    if (at > 0 && cycles[at - 1]?.ends === 'gap') break;
    const where = (cycle.slowTrip ?? cycle.trip)?.where;
    if (where) placed.push({ cycle, place: difference(where, shifted) });
    if (cycle.zero.kind === 'jump')
      shifted = {
        low: mm(shifted.low + cycle.zero.shift.low),
        high: mm(shifted.high + cycle.zero.shift.high),
      };
  }
  return placed;
}
