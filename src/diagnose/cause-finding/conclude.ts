import type { CauseEvidence, CauseFacts, SearchOrder, Told } from '../../model/cause-facts.ts';
import type { FaultName } from '../../model/fault-names.ts';
import { knownOnly } from '../../model/known-only.ts';
import type { InputName } from '../../model/machine.ts';
import type { Outcome } from '../../model/outcomes.ts';
import { share } from '../../model/units.ts';
import { normalised } from '../troubleshooting/belief.ts';
import { namesOf } from '../troubleshooting/hypotheses.ts';
import { sureEnough } from '../troubleshooting/inquiry.ts';
import type { Candidates } from './candidates.ts';
import type { Search } from './search.ts';

/** So many times likelier under what was named than under what was not: that speaks for it, or its inverse against it (judgement). */
const tells = 1.5;
/** Faults this likely before, and this unlikely after, are told to be ruled out; no more of them than a person reads. */
const likelyBefore = 0.01;
const unlikelyAfter = 0.003;
const toldAtMost = 8;

export interface Learnt {
  readonly deed: CauseEvidence['deed'];
  readonly outcome: Outcome;
  readonly value?: number;
  readonly earlier?: true;
}

export interface Searched {
  readonly search: Search;
  readonly candidates: Candidates;
  readonly order: Pick<SearchOrder, 'history'>;
  readonly learnt: readonly Learnt[];
  readonly notDone: CauseFacts['notDone'];
  readonly isOver: boolean;
  readonly told: Told;
  /** Another input that answered in the place of this one or beside it. */
  readonly beside: InputName | undefined;
}

/** What a search has come to, with what speaks for it and against it. */
export function causeFacts(searched: Searched): CauseFacts {
  const { search, candidates, order, learnt, notDone, isOver } = searched;
  const { causes, share: together } = search.conclusion();
  return {
    causes,
    ...knownOnly({ beside: causes.flat().some(concernsAnother) ? searched.beside : undefined }),
    share: share(Math.min(1, Math.round(together * 1e4) / 1e4)),
    ended: !isOver ? 'stopped' : causes.length === 1 && together >= sureEnough ? 'named' : 'inseparable',
    wirings: candidates.wirings.map(({ circuit, contact }) => ({ name: circuit.name, contact })),
    assumed: candidates.assumed,
    history: order.history,
    told: searched.told,
    evidence: learnt.map((each) => ({ ...each, speaks: speaks(each, causes, search) })),
    notDone,
    ruledOut: ruledOut(causes, search),
    retest: ['press', 'open-wire'],
  };
}

/** Faults in which the wire of another switch has its part. */
const concernsAnother = (name: FaultName): boolean => withAnother.includes(name);
const withAnother: readonly FaultName[] = [
  'inputs-crossed',
  'ends-swapped',
  'plug-shifted',
  'wrong-terminal',
  'signals-together',
];

const keyOf = (cause: readonly FaultName[]): string => [...cause].sort().join();

function speaks(
  { deed, outcome }: Learnt,
  causes: CauseFacts['causes'],
  { prospect }: Search,
): CauseEvidence['speaks'] {
  const trial = prospect.trials.find(({ name }) => name === deed);
  if (!trial) return 'neither';
  const named = new Set(causes.map(keyOf));
  const at = trial.keys.indexOf(outcome) < 0 ? trial.keys.length - 1 : trial.keys.indexOf(outcome);
  const under = (isNamed: boolean): number => {
    let [sum, weight] = [0, 0];
    for (const [index, hypothesis] of prospect.hypotheses.entries()) {
      if (named.has(keyOf(namesOf(hypothesis))) !== isNamed) continue;
      sum += hypothesis.weight * (trial.chances[index]?.[at] ?? 0);
      weight += hypothesis.weight;
    }
    return weight > 0 ? sum / weight : 0;
  };
  const ratio = under(true) / Math.max(under(false), 1e-9);
  return ratio >= tells ? 'for' : ratio <= 1 / tells ? 'against' : 'neither';
}

function ruledOut(causes: CauseFacts['causes'], { prospect, belief }: Search): readonly FaultName[] {
  const before = normalised(prospect.hypotheses.map(({ weight }) => weight));
  const named = new Set(causes.flat());
  const sums = new Map<FaultName, { before: number; after: number }>();
  for (const [at, { faults }] of prospect.hypotheses.entries()) {
    for (const { name } of faults) {
      const sum = sums.get(name) ?? { before: 0, after: 0 };
      sums.set(name, { before: sum.before + (before[at] ?? 0), after: sum.after + (belief[at] ?? 0) });
    }
  }
  return [...sums]
    .filter(([name, sum]) => !named.has(name) && sum.before >= likelyBefore && sum.after <= unlikelyAfter)
    .sort(([, a], [, b]) => b.before - a.before)
    .slice(0, toldAtMost)
    .map(([name]) => name);
}
