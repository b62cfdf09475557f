import { type Mm, mm } from '../../model/units.ts';
import type { HomingCycle } from '../homing/cycle.ts';
import { difference, exactly, type Interval } from '../motion/interval.ts';

/** One homing and where its trip that counts was, in its own frame; undefined where none was seen. */
export interface TrippedCycle {
  readonly cycle: HomingCycle;
  readonly place: Interval<Mm> | undefined;
}

/** The same in the frame of the first homing. */
export interface PlacedCycle<Of extends TrippedCycle = TrippedCycle> {
  readonly of: Of;
  readonly place: Interval<Mm>;
}

/**
 * Every homing sets the numbers anew, so that the places of two homings stand in two frames. What each zero shifted by is taken out again; the doubt of a shift is
 * carried on. Cycles without a trip are left out. A hole between two cycles breaks the frame, and what comes after it is left out.
 */
export function placedCycles<Of extends TrippedCycle>(cycles: readonly Of[]): readonly PlacedCycle<Of>[] {
  const placed: PlacedCycle<Of>[] = [];
  let shifted: Interval<Mm> = exactly(mm(0));
  for (const [at, of] of cycles.entries()) {
    if (at > 0 && cycles[at - 1]?.cycle.ends === 'gap') break;
    if (of.place) placed.push({ of, place: difference(of.place, shifted) });
    const { zero } = of.cycle;
    if (zero.kind === 'jump')
      shifted = { low: mm(shifted.low + zero.shift.low), high: mm(shifted.high + zero.shift.high) };
  }
  return placed;
}
