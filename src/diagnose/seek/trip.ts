import type { InputName } from '../../model/machine.ts';
import { type Mm, mm } from '../../model/units.ts';
import type { Direction } from '../motion/runs.ts';
import type { SeekExpectation } from './expectation.ts';
import { clearsWithin, longestBackOff, mayRunOn, squaresWithin } from './limits.ts';

/** A trip of the axis's own switch, as the watch follows it. */
export interface Trip {
  readonly input: InputName;
  /** At the report that made it certain. */
  readonly position: Mm;
  readonly speed: number;
  readonly way: Direction | undefined;
  /** Every home input of the axis is operated. */
  readonly both: boolean;
  /** Not operated already when the axis set off. */
  readonly underWay: boolean;
}

/** mm it may go on past its trip: to stop, and where a beam has two switches until the second has answered. */
export function mayGoOn({ speed, both }: Trip, { acceleration, reaction, step }: SeekExpectation): Mm {
  return mm(mayRunOn(speed, acceleration, reaction, step) + (both ? 0 : squaresWithin));
}

/** mm it may come back with its switch still operated: one found operated may have been driven in by more than one that has just tripped. */
export const mayComeBack = ({ underWay }: Trip, { backOff }: SeekExpectation): number =>
  Math.max(underWay ? clearsWithin : longestBackOff, backOff ?? 0);
