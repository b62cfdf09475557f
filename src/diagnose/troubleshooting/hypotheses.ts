import type { FaultName } from '../../model/fault-names.ts';
import type { Wiring } from '../circuit/wiring.ts';
import type { Fault, Likelihood } from '../fault-finding/fault.ts';
import { faultsOf } from '../fault-finding/registry.ts';
import type { Surroundings } from './imagined.ts';

/** What may be the matter: one fault, two at once, or nothing that this input shows. A fault in each of its degrees is one of its own. */
export interface Hypothesis {
  readonly faults: readonly Fault[];
  readonly weight: number;
}

/** `fresh`: newly built, never proved. `worked`: it did its duty before. */
export type History = keyof Likelihood;

/** How many pairs are kept in mind beside the single faults: the likeliest. */
const likelyPairs = 40;
/** A second fault stands beside a first one this often, as a share of what chance alone would give both (judgement). */
const pairShare = 0.3;
/** Nothing wrong on the input itself: the complaint came from elsewhere, or it has mended itself (judgement, a share of all). */
const nothingShare = 0.03;

export function hypothesesOf(
  wiring: Wiring,
  history: History,
  around: Omit<Surroundings, 'told'>,
): readonly Hypothesis[] {
  const leftOut = impossibleBy(around);
  const singles: readonly Hypothesis[] = faultsOf(wiring)
    .filter(({ name }) => !leftOut.includes(name))
    // A fault that hardly ever happens there is still possible.
    .map((fault) => ({ faults: [fault], weight: Math.max(fault.likelihood[history], 0.2) }));
  const total = singles.reduce((sum, { weight }) => sum + weight, 0);
  const pairs = singles
    .flatMap((one, at) =>
      singles.slice(at + 1).map((other) => ({
        faults: [...one.faults, ...other.faults],
        weight: (pairShare * one.weight * other.weight) / total,
      })),
    )
    .sort((a, b) => b.weight - a.weight)
    .slice(0, likelyPairs);
  return [...singles.flatMap(byDegrees), ...pairs, { faults: [], weight: nothingShare * total }];
}

/** What cannot be the matter by what surrounds the input. */
const impossibleBy = ({ otherEnd, polarityEach }: Omit<Surroundings, 'told'>): readonly FaultName[] => [
  ...(otherEnd ? [] : (['ends-swapped'] as const)),
  ...(polarityEach ? (['polarity-for-all'] as const) : []),
];

function byDegrees({ faults, weight }: Hypothesis): readonly Hypothesis[] {
  const [fault] = faults;
  if (fault?.degrees === undefined) return [{ faults, weight }];
  const { degrees } = fault;
  return degrees.map((alters) => ({ faults: [{ ...fault, alters }], weight: weight / degrees.length }));
}

export const namesOf = ({ faults }: Hypothesis) => faults.map(({ name }) => name);

/** Faults that put the wire of another switch on this input: whatever is tested at it then tells of the other one. */
const anothersWire: readonly FaultName[] = ['inputs-crossed', 'ends-swapped', 'plug-shifted'];

/**
 * What has to be mended first, by one name. Another switch's wire comes off before anything more that may be wrong can be told: it
 * need not be told apart from the same with a second fault beside it.
 */
export const aimOf = (hypothesis: Hypothesis): string => {
  const names = namesOf(hypothesis);
  return names.find((name) => anothersWire.includes(name)) ?? names.join('+');
};
