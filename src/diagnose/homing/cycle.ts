import type { InputName } from '../../model/machine.ts';
import type { Mm } from '../../model/units.ts';
import type { Condition, InputEdge } from '../motion/edges.ts';
import type { Interval } from '../motion/interval.ts';
import type { Leg } from './legs.ts';

/** A homing as the stream showed it, part by part; what was not seen is undefined. */
export interface HomingCycle {
  readonly axis: string;
  readonly input: InputName;
  readonly start: { readonly position: Mm | undefined; readonly condition: Condition };
  /** Off a switch that was operated when it began. */
  readonly freed: Leg | undefined;
  readonly approach: Leg | undefined;
  readonly trip: InputEdge | undefined;
  /** Where the approach came to rest or turned. */
  readonly stop: Interval<Mm> | undefined;
  /** Of the approach, mm/s². */
  readonly acceleration: Interval | undefined;
  /** Way from the trip to the stop, mm. */
  readonly stopDistance: Interval<Mm> | undefined;
  readonly backOff: Leg | undefined;
  readonly clear: InputEdge | undefined;
  readonly slowApproach: Leg | undefined;
  readonly slowTrip: InputEdge | undefined;
  readonly release: Leg | undefined;
  readonly slowClear: InputEdge | undefined;
  /** Ways after the release: further touches. */
  readonly further: readonly Leg[];
  readonly zero: ZeroSet;
  /** The last thing known of the input. */
  readonly endCondition: Condition;
  readonly ends: 'still' | 'moving' | 'fault' | 'gap';
}

/** How the zero came about. `shift`: the new number less the old one at the same place, mm; a doubt where the axis was still on its way. */
export type ZeroSet =
  | { readonly kind: 'jump'; readonly shift: Interval<Mm>; readonly to: Mm; readonly after: number }
  /** It ended at the home value without a visible jump: the frame already agreed, or the value was reached by chance. */
  | { readonly kind: 'agrees'; readonly at: Mm }
  | { readonly kind: 'not-seen' };
