import type { Axis } from './axis.ts';

/** What a controller does that its owner did not ask for. */
export interface Quirks {
  /** Goes into fault when a limit input becomes active, until it is cleared. */
  haltsAtLimit: boolean;
  /** The stop button does not take the drives' power away. */
  powerStaysOn: boolean;
  /** Letting the stop button out gives the drives their power back, and the interrupted move goes on. */
  restartsOnUnlatch: boolean;
  /** Inputs whose plug, pulled the next time, makes the controller's supply dip. */
  readonly restartsOnUnplug: Set<string>;
  /** Brakes and goes into fault where a move trips a limit; else it only reports it. While homing no limit is heeded. */
  heedsLimits: boolean;
  /** With any limit active nothing is started. */
  refusesAtLimit: boolean;
  /** Called before an axis sets off. */
  readonly beforeMotion: ((axis: Axis) => void)[];
}

export const noQuirks = (): Quirks => ({
  haltsAtLimit: false,
  powerStaysOn: false,
  restartsOnUnlatch: false,
  restartsOnUnplug: new Set(),
  heedsLimits: true,
  refusesAtLimit: false,
  beforeMotion: [],
});
