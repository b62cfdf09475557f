import type { Belief, Chances } from './belief.ts';
import {
  type Alive,
  aliveIn,
  type Classes,
  classesOf,
  columnsOf,
  entropyTimes,
  groupWeights,
  jointWeights,
  mostOf,
  sumOf,
} from './columns.ts';

/** One thing that can be done to learn more. */
export interface Test {
  readonly name: string;
  readonly minutes: number;
  readonly outcomes: number;
  readonly chances: Chances;
}

export interface Choice<Of extends Test = Test> {
  readonly test: Of;
  /** Expected information of the test itself, bits. */
  readonly bits: number;
  /** Expected minutes to the end, by the two-step estimate. */
  readonly expectedMinutes: number;
}

export interface Grouping {
  /** Hypotheses of one class need not be told apart: one fix mends them all. */
  readonly classOf: readonly number[];
  /** A class this likely is named, and the search is over; left out: only what is certain. */
  readonly sure?: number;
}

/** How many tests, most information per minute first, are looked at two steps deep, and how many after each of their outcomes. */
const lookedAtDeeply = 5;
const lookedAtNext = 5;
/** Less than this is no information worth a minute, bits. */
export const worthless = 0.005;
/** Outcomes rarer than this change no choice. */
const rarest = 5e-3;
/** Nor do hypotheses this unlikely: at the start, and two steps on. */
const unlikely = 1e-7;
const unlikelyThen = 1e-4;

/**
 * The next test: expected information per minute finds the candidates; of the best ones, the one with the least expected minutes
 * to the end over two steps is taken, for the test that tells most at once may leave the rest badly cut. Undefined where no test
 * tells anything more. `belief` sums to 1.
 */
export function nextTest<Of extends Test>(
  belief: Belief,
  tests: readonly Of[],
  { classOf, sure = 1 }: Grouping,
): Choice<Of> | undefined {
  const classes = classesOf(classOf);
  const end = { classes, sure };
  const useful = rated(aliveIn(belief, classes, unlikely), tests);
  let best: Choice<Of> | undefined;
  for (const { test, bits } of useful.slice(0, lookedAtDeeply)) {
    let expectedMinutes = test.minutes;
    for (const column of columnsOf(test.chances, test.outcomes)) {
      const { then, chance } = after(belief, column);
      if (chance > rarest) expectedMinutes += chance * oneStep(then, tests, end);
    }
    if (!best || expectedMinutes < best.expectedMinutes - 1e-12) best = { test, bits, expectedMinutes };
  }
  return best;
}

/** Tests that tell something, most information per minute first. */
function rated<Of extends Test>(alive: Alive, tests: readonly Of[]) {
  return tests
    .map((test) => ({ test, bits: bitsOf(alive, test) }))
    .filter(({ bits }) => bits > worthless)
    .sort((a, b) => b.bits / b.test.minutes - a.bits / a.test.minutes);
}

/** Expected fall of the entropy over classes, bits. */
export const informationOf = (belief: Belief, test: Test, classOf: readonly number[]): number =>
  bitsOf(aliveIn(belief, classesOf(classOf), 0), test);

function bitsOf(alive: Alive, test: Test): number {
  const prior = new Float64Array(alive.classes);
  let left = 0;
  for (const column of columnsOf(test.chances, test.outcomes)) {
    const weights = jointWeights(alive, column);
    const chance = sumOf(weights);
    if (chance <= 0) continue;
    left += entropyTimes(weights, chance);
    for (let i = 0; i < weights.length; i++) prior[i] = (prior[i] ?? 0) + (weights[i] ?? 0);
  }
  return entropyTimes(prior, sumOf(prior)) - left;
}

function after(belief: Belief, column: Float64Array): { then: Float64Array; chance: number } {
  const then = new Float64Array(column.length);
  for (let i = 0; i < column.length; i++) then[i] = (belief[i] ?? 0) * (column[i] ?? 0);
  const chance = sumOf(then);
  if (chance > 0) for (let i = 0; i < then.length; i++) then[i] = (then[i] ?? 0) / chance;
  return { then, chance };
}

interface End {
  readonly classes: Classes;
  readonly sure: number;
}

/** Minutes to the end from here: the best single test, then what is left at the pace of the test that tells most a minute. */
function oneStep(belief: Float64Array, tests: readonly Test[], { classes, sure }: End): number {
  const alive = aliveIn(belief, classes, unlikelyThen);
  if (alive.classes < 2 || mostOf(groupWeights(alive)) >= sure) return 0;
  const useful = rated(alive, tests).slice(0, lookedAtNext);
  const pace = Math.min(...useful.map(({ test, bits }) => test.minutes / bits));
  let best = Infinity;
  for (const { test } of useful) {
    let minutes = test.minutes;
    // Both measures of weights are proportional to them: they need not be made to sum to 1.
    for (const column of columnsOf(test.chances, test.outcomes)) {
      const weights = jointWeights(alive, column);
      if (mostOf(weights) < sure * sumOf(weights)) minutes += pace * entropyTimes(weights, sumOf(weights));
    }
    best = Math.min(best, minutes);
  }
  return best === Infinity ? 0 : best;
}

export function weightsOf(belief: ArrayLike<number>, classOf: ArrayLike<number>): readonly number[] {
  const weights: number[] = [];
  for (let hypothesis = 0; hypothesis < belief.length; hypothesis++) {
    const group = classOf[hypothesis] ?? hypothesis;
    weights[group] = (weights[group] ?? 0) + (belief[hypothesis] ?? 0);
  }
  return [...weights].map((each) => each ?? 0);
}
