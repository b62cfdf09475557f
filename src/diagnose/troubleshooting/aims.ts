import type { Chances } from './belief.ts';

/** One thing that can be done to learn more. */
export interface Test {
  readonly name: string;
  readonly minutes: number;
  readonly outcomes: number;
  readonly chances: Chances;
  /** Hypotheses of one number would show just the same. */
  readonly sameAs: readonly number[];
}

export interface Aims {
  /** What each hypothesis is called: those of one name need not be told apart, for one fix mends them all. */
  readonly names: readonly string[];
  /** What is this likely is named, and the search is over; left out: only what is certain. */
  readonly sure?: number;
}
