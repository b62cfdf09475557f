import type { InputName } from './machine.ts';
import type { Active, GapWhy, Level } from './reading.ts';
import type { Millis } from './units.ts';

/** What the inputs of a whole session did, change by change, on one time line that never goes back. */
export type SignalEvent = SignalChange | SignalBreak;

/** An input was first heard of, or changed. */
export interface SignalChange {
  readonly kind: 'change';
  /**
   * Since the session began. Within a segment it goes by the controller's clock, set to the host's at the first report of the
   * segment.
   */
  readonly at: Millis;
  /** When the host heard of it. */
  readonly arrived: Millis;
  readonly input: InputName;
  readonly level: Level;
  readonly active: Active;
}

/** What the inputs were before is no longer known to hold. */
export interface SignalBreak {
  readonly kind: 'break';
  readonly at: Millis;
  readonly arrived: Millis;
  readonly why: GapWhy;
}
