import type { Random } from '../../../../src/diagnose/circuit/random.ts';
import { chanceOf } from '../../../../src/diagnose/troubleshooting/belief.ts';
import { Inquiry } from '../../../../src/diagnose/troubleshooting/inquiry.ts';
import type { Prospect, Trial } from '../../../../src/diagnose/troubleshooting/prospect.ts';
import { type Outcome, unforeseen } from '../../../../src/model/outcomes.ts';
import { byWeight } from './draws.ts';
import type { Guide } from './search.ts';

/** Branches less likely than this are not followed, by neither. */
const rarest = 1e-4;

/** A few of the likely causes and a few of the deeds that tell them apart: small enough to be thought through to the end. */
export function small(prospect: Prospect, random: Random, causes: number, deeds: number): Prospect {
  const chosen = new Set<number>();
  const singles = [...prospect.hypotheses.keys()].filter(
    (at) => prospect.hypotheses[at]?.faults.length === 1,
  );
  while (chosen.size < Math.min(causes, singles.length))
    chosen.add(byWeight(random, singles, (at) => prospect.hypotheses[at]?.weight ?? 0));
  const at = [...chosen];
  const telling = prospect.trials
    .filter(({ sameAs }) => new Set(at.map((each) => sameAs[each])).size > 1)
    .map((trial) => ({ trial, order: random() }))
    .sort((one, other) => one.order - other.order)
    .slice(0, deeds)
    .map(({ trial }) => narrowed(trial, at));
  return {
    wiring: prospect.wiring,
    hypotheses: at.flatMap((each) => prospect.hypotheses[each] ?? []),
    trials: telling,
  };
}

/** Outcomes that tell none of these causes from another are one. */
function narrowed(trial: Trial, at: readonly number[]): Trial {
  const rows = at.map((each) => trial.chances[each] ?? []);
  const telling = trial.keys.map((_, key) => new Set(rows.map((row) => (row[key] ?? 0).toFixed(9))).size > 1);
  const pick = (row: readonly number[]) => [
    ...row.filter((_, key) => telling[key]),
    row.reduce((sum, each, key) => (telling[key] ? sum : sum + each), 0),
  ];
  const keys: readonly Outcome[] = [...trial.keys.filter((_, key) => telling[key]), unforeseen];
  return {
    ...trial,
    keys,
    outcomes: keys.length,
    chances: rows.map(pick),
    sameAs: at.map((each) => trial.sameAs[each] ?? 0),
  };
}

const stateOf = ({ findings }: Inquiry): string =>
  findings
    .map(({ deed, outcome }) => `${deed}=${outcome}`)
    .sort()
    .join();

/** Expected minutes after a deed, each outcome followed. */
function minutesOf(inquiry: Inquiry, trial: Trial, chance: number, then: Follow): number {
  return trial.keys.reduce((sum, key, outcome) => {
    const share = chanceOf(inquiry.belief, trial.chances, outcome);
    return chance * share < rarest
      ? sum
      : sum + share * then(inquiry.learnt(trial.name, key), chance * share);
  }, trial.minutes);
}
type Follow = (inquiry: Inquiry, chance: number) => number;

/** The least expected minutes to the same end, by dynamic programming over everything that can have been learnt. */
export function leastMinutes(prospect: Prospect): number {
  const known = new Map<string, number>();
  const follow: Follow = (inquiry, chance) => {
    const key = stateOf(inquiry);
    const before = known.get(key);
    if (before !== undefined) return before;
    const ways = inquiry.useful().map((trial) => minutesOf(inquiry, trial, chance, follow));
    const least = ways.length === 0 ? 0 : Math.min(...ways);
    known.set(key, least);
    return least;
  };
  return follow(Inquiry.begin(prospect), 1);
}

/** The expected minutes of a guide on the same problem. */
export function guidedMinutes(prospect: Prospect, guide: Guide): number {
  const follow: Follow = (inquiry, chance) => {
    const trial = guide(inquiry);
    return trial ? minutesOf(inquiry, trial, chance, follow) : 0;
  };
  return follow(Inquiry.begin(prospect), 1);
}
