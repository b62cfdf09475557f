import { searchChecks } from '../diagnose/cause-finding/checks.ts';
import { possibleCauses } from '../diagnose/cause-finding/remaining.ts';
import { wiringsOf } from './wirings.ts';

/** What needs the circuits and their faults. To load them takes as long as to judge a session: who shows nothing of them does without. */
export const circuitsKnown = {
  /** The checks of a search for a cause. */
  searchChecks,
  /** What a fault may come from. */
  possibleCauses,
  /** What each declared circuit does under every fault. */
  wiringsOf,
} as const;
export type CircuitsKnown = typeof circuitsKnown;
