import type { SearchOrder } from '../../model/cause-facts.ts';
import { type Machine, switchOf } from '../../model/machine.ts';
import type { PossibleCauses, Verdict } from '../../model/verdict.ts';
import type { Wiring } from '../circuit/wiring.ts';
import type { Deed } from '../troubleshooting/deed.ts';
import { deeds } from '../troubleshooting/deeds/all.ts';
import { type Hypothesis, hypothesesOf, namesOf } from '../troubleshooting/hypotheses.ts';
import { Imagined, type Surroundings } from '../troubleshooting/imagined.ts';
import { surroundingsOf } from './begin-search.ts';
import { candidatesOf } from './candidates.ts';
import { firstSeen, seenOf } from './earlier.ts';
import { toldBy } from './site.ts';

type Evidence = SearchOrder['earlier'];

/** How many causes are named; the others are counted. */
const most = 5;
/** A cause this much less likely than the first is not named beside it. */
const negligible = 0.02;

export interface Remaining {
  readonly faults: Hypothesis['faults'];
  /** Likelihood times how well it agrees; the sum over a wiring is no probability. */
  readonly weight: number;
}

/**
 * What of everything that can be the matter with a wiring agrees with what was seen, the likeliest first; nothing where a sound input
 * agrees as well. Pure. `around`: what the stream tells, and whether the other end of the axis has an input of its own.
 */
export function remaining(seen: Evidence, wiring: Wiring, around: Surroundings): readonly Remaining[] {
  const trials: readonly { readonly odds: Deed['odds']; readonly outcome: string }[] = seen.flatMap(
    ({ deed, outcome }) => deeds.filter(({ name }) => name === deed).map(({ odds }) => ({ odds, outcome })),
  );
  const agreement = (faults: Hypothesis['faults']): number => {
    const scene = new Imagined(wiring, faults, around);
    return trials.reduce((product, { odds, outcome }) => product * (odds(scene)[outcome] ?? 0), 1);
  };
  if (trials.length === 0 || agreement([]) > soundAgrees) return [];
  const agreeing = hypothesesOf(wiring, 'fresh', around)
    .filter(({ faults }) => faults.length > 0)
    .map(({ faults, weight }) => ({ faults, weight: weight * agreement(faults) }))
    .filter(({ weight }) => weight > 0);
  const alone = new Set(
    agreeing.flatMap(({ faults }) => (faults.length === 1 ? faults.map(({ name }) => name) : [])),
  );
  // What one fault explains by itself needs no second one beside it.
  return agreeing
    .filter(({ faults }) => faults.length === 1 || !faults.some(({ name }) => alone.has(name)))
    .sort((a, b) => b.weight - a.weight);
}

/** From here on it is likelier that nothing on the input is the matter than anything else. */
const soundAgrees = 0.5;

/**
 * The causes that remain possible after the presses or the unplugging of a switch went wrong, in every wiring that it may have; undefined
 * where the verdict leaves nothing to explain or too little was seen.
 */
export function possibleCauses(
  verdict: Verdict,
  before: readonly Verdict[],
  machine: Machine,
): PossibleCauses | undefined {
  const { check, status, subject } = verdict;
  if ((check !== 'press' && check !== 'open-wire') || (status !== 'failed' && status !== 'limited'))
    return undefined;
  const of = switchOf(machine, subject);
  if (!of) return undefined;
  const verdicts = [...before.filter((each) => each.check !== check || each.subject !== subject), verdict];
  const seen = seenOf(of, verdicts, machine);
  const state = firstSeen(of, verdicts);
  if (!state || !seen.some(({ deed }) => deed === 'press')) return undefined;
  const { wirings, assumed } = candidatesOf(machine, of);
  const around = surroundingsOf(toldBy(state), of, machine);
  const shares = new Map<string, { faults: Hypothesis['faults']; share: number }>();
  for (const each of wirings.map((wiring) => remembered(seen, wiring, around))) {
    const total = each.reduce((sum, { weight }) => sum + weight, 0);
    for (const { faults, weight } of each) {
      const key = namesOf({ faults, weight }).join('+');
      shares.set(key, { faults, share: (shares.get(key)?.share ?? 0) + weight / total });
    }
  }
  const ranked = [...shares.values()].sort((a, b) => b.share - a.share);
  const least = negligible * (ranked[0]?.share ?? 0);
  const named = ranked.filter(({ share }) => share >= least).slice(0, most);
  if (named.length === 0) return undefined;
  return {
    causes: named.map(({ faults }) => faults.map(({ name }) => name)),
    others: ranked.length - named.length,
    assumed,
  };
}

/** Sessions of one machine, live and judged again, see the same few things of the same few wirings. */
const known = new Map<string, readonly Remaining[]>();
const thoughtOf = new Map<string, Wiring>();

function remembered(seen: Evidence, wiring: Wiring, around: Surroundings): readonly Remaining[] {
  const { circuit, contact, family, values } = wiring;
  // JSON has no infinity: a part left out is null there, and no given value is.
  const of = JSON.stringify([circuit.name, contact, family, values]);
  // What was solved for a wiring is kept with it.
  const same = thoughtOf.get(of) ?? wiring;
  thoughtOf.set(of, same);
  const key = JSON.stringify([of, seen, around]);
  const found = known.get(key) ?? remaining(seen, same, around);
  known.set(key, found);
  return found;
}
