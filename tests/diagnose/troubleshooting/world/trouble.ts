import type { Random } from '../../../../src/diagnose/circuit/random.ts';
import type { State } from '../../../../src/diagnose/circuit/state.ts';
import type { Input } from './input.ts';
import type { Machine } from './machine.ts';

/** Where and when a fault works. */
export interface Moment {
  readonly machine: Machine;
  readonly state: State;
  /** The same at every moment: how strong this fault is on this machine. */
  readonly lasting: Random;
  /** Different at every moment: what comes and goes. */
  readonly now: Random;
}

/** What really happens when something is wrong. The troubleshooter never sees this; its own picture stands elsewhere and is coarser. */
export interface Trouble {
  /** What is wrong of; two troubles of one part cannot be there at once. */
  readonly part: string;
  /** It reaches the input beside this one. */
  readonly beside?: true;
  readonly plays?: (input: Input, moment: Moment) => void;
}
