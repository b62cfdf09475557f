import { type Share, share } from '../../model/units.ts';
import { corners, drawn } from '../circuit/boards.ts';
import type { Random } from '../circuit/random.ts';
import type { State } from '../circuit/state.ts';
import type { Wiring } from '../circuit/wiring.ts';
import type { Fault } from './fault.ts';
import { type Reported, readingOf, type Seen } from './reading-of.ts';

/** How often each reading comes about over boards drawn from the tolerances; the shares sum to one. */
export function likelyReadings(
  wiring: Wiring,
  state: State,
  faults: readonly Fault[],
  random: Random,
  draws: number,
): ReadonlyMap<Reported, Share> {
  const counts = new Map<Reported, number>();
  for (let draw = 0; draw < draws; draw++) {
    const { reported } = readingOf(wiring, state, faults, drawn(wiring, random));
    counts.set(reported, (counts.get(reported) ?? 0) + 1);
  }
  return new Map([...counts].map(([reported, count]) => [reported, share(count / draws)]));
}

/** Every level that some corner of the tolerances gives; one alone is sure for any board. */
export const levelsAtCorners = (
  wiring: Wiring,
  state: State,
  faults: readonly Fault[],
): ReadonlySet<Seen['level']> =>
  new Set(corners(wiring).map((world) => readingOf(wiring, state, faults, world).level));
