import type { DeedName } from '../../model/deed-names.ts';
import type { FaultName } from '../../model/fault-names.ts';
import type { Outcome } from '../../model/outcomes.ts';
import { chanceOf } from '../troubleshooting/belief.ts';
import type { Kind } from '../troubleshooting/deed.ts';
import type { Search } from './search.ts';

/** One test that could be done next, and what each of its answers would mean. */
export interface NextTest {
  readonly deed: DeedName;
  readonly kind: Kind;
  readonly minutes: number;
  readonly answers: readonly {
    readonly outcome: Outcome;
    /** How likely this answer is, as far as is known now. */
    readonly chance: number;
    /** What it would then most likely be, the likeliest first, at most three. */
    readonly causes: readonly (readonly FaultName[])[];
    /** All causes that would then still be thought of. */
    readonly left: number;
  }[];
}

/** Answers rarer than this are not told, but for the two likeliest: one answer alone tells nothing. */
const rarest = 0.02;
const fewest = 2;
const mostCauses = 3;

/** The best tests, the best first: each is what would be asked next if those before it could not be done. */
export function nextTests(search: Search, most: number): readonly NextTest[] {
  const tests: NextTest[] = [];
  let left = search;
  while (tests.length < most) {
    const { trial, search: now } = left.next();
    if (!trial) break;
    const { name: deed, kind, minutes, keys, chances } = trial;
    const answers = keys
      .map((outcome, at) => ({ outcome, chance: chanceOf(now.belief, chances, at) }))
      .toSorted((a, b) => b.chance - a.chance)
      .filter(({ chance }, rank) => chance >= rarest || (rank < fewest && chance > 0))
      .map(({ outcome, chance }) => {
        const { causes } = now.learnt(deed, outcome).conclusion();
        return { outcome, chance, causes: causes.slice(0, mostCauses), left: causes.length };
      });
    tests.push({ deed, kind, minutes, answers });
    left = now.ruledOut(deed);
  }
  return tests;
}
