import type { Random } from '../../../../src/diagnose/circuit/random.ts';
import { entropy } from '../../../../src/diagnose/troubleshooting/belief.ts';
import { kinds } from '../../../../src/diagnose/troubleshooting/deed.ts';
import { type DeedName, deeds } from '../../../../src/diagnose/troubleshooting/deeds/all.ts';
import { sureEnough } from '../../../../src/diagnose/troubleshooting/inquiry.ts';
import type { Prospect } from '../../../../src/diagnose/troubleshooting/prospect.ts';
import { byWeight } from './draws.ts';
import type { Guide } from './search.ts';

/** One imagined machine in the writer's head: how likely each group of causes is by now, and what each deed would show on it. */
interface Sample {
  weights: Float64Array;
  readonly groups: readonly number[];
  readonly shows: ReadonlyMap<DeedName, Float64Array>;
}

/**
 * The order in which a printed guide would have everything done: over the whole population, whatever tells most a minute after all
 * that stands before it; hands first, then the meter, then the drives.
 */
export function checklistFor(
  prospects: readonly Prospect[],
  random: Random,
  samples: number,
): readonly DeedName[] {
  const all = Array.from({ length: samples }, (_, at) =>
    sampleOf(prospects[at % prospects.length], random),
  ).flat();
  return kinds.flatMap((kind) => {
    const left = deeds.filter((deed) => deed.kind === kind).map(({ name, minutes }) => ({ name, minutes }));
    const order: DeedName[] = [];
    while (left.length > 0) {
      const best = left
        .map((deed) => told(all, deed))
        .reduce((most, each) => (each.rate > most.rate ? each : most));
      order.push(best.name);
      left.splice(
        left.findIndex(({ name }) => name === best.name),
        1,
      );
      for (const sample of all) sample.weights = after(sample, best.name) ?? sample.weights;
    }
    return order;
  });
}

/** The next on the list that applies, until the cause is sure: the guide is allowed the troubleshooter's own judgement of that. */
export const byList =
  (order: readonly DeedName[]): Guide =>
  (inquiry) => {
    // A printed list asks for everything once: nothing waits for a second answer.
    const once = inquiry.findings.reduce((now, { deed }) => now.ruledOut(deed), inquiry);
    if (once.isSure()) return undefined;
    const left = inquiry.left.filter(({ name }) => !inquiry.findings.some(({ deed }) => deed === name));
    const next = order.find((name) => left.some((trial) => trial.name === name));
    return left.find(({ name }) => name === next);
  };

function sampleOf(prospect: Prospect | undefined, random: Random): readonly Sample[] {
  if (!prospect) return [];
  const { hypotheses, trials } = prospect;
  const truth = byWeight(random, [...hypotheses.keys()], (at) => hypotheses[at]?.weight ?? 0);
  const total = hypotheses.reduce((sum, { weight }) => sum + weight, 0);
  const numbers = new Map<string, number>();
  const groups = hypotheses.map((_, at) => {
    const text = trials.map(({ sameAs }) => sameAs[at]).join();
    numbers.set(text, numbers.get(text) ?? numbers.size);
    return numbers.get(text) ?? 0;
  });
  const shows = trials.map(({ name, chances, outcomes }) => {
    const outcome = byWeight(random, [...Array(outcomes).keys()], (at) => chances[truth]?.[at] ?? 0);
    return [name, Float64Array.from(chances, (row) => row[outcome] ?? 0)] as const;
  });
  return [
    { weights: Float64Array.from(hypotheses, ({ weight }) => weight / total), groups, shows: new Map(shows) },
  ];
}

function after({ weights, shows }: Sample, deed: DeedName): Float64Array | undefined {
  const column = shows.get(deed);
  if (!column) return undefined;
  const then = weights.map((each, at) => each * (column[at] ?? 0));
  const sum = then.reduce((all, each) => all + each, 0);
  return then.map((each) => each / sum);
}

function told(all: readonly Sample[], deed: { readonly name: DeedName; readonly minutes: number }) {
  let [bits, minutes] = [0, 0];
  for (const sample of all) {
    const before = grouped(sample, sample.weights);
    const then = Math.max(...before) < sureEnough ? after(sample, deed.name) : undefined;
    if (!then) continue;
    minutes += deed.minutes;
    bits += entropy(before) - entropy(grouped(sample, then));
  }
  return { name: deed.name, rate: minutes > 0 ? bits / minutes : Number.NEGATIVE_INFINITY };
}

function grouped({ groups }: Sample, weights: Float64Array): readonly number[] {
  const sums: number[] = Array(weights.length).fill(0);
  for (const [at, weight] of weights.entries()) sums[groups[at] ?? 0] = (sums[groups[at] ?? 0] ?? 0) + weight;
  return sums;
}
