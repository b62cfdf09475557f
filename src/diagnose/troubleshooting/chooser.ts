import { type Belief, type Chances, chanceOf, entropy, posterior } from './belief.ts';
import { huffmanLength } from './cost-to-go.ts';

/** One thing that can be done to learn more. */
export interface Test {
  readonly name: string;
  readonly minutes: number;
  readonly outcomes: number;
  readonly chances: Chances;
}

export interface Choice {
  readonly test: Test;
  /** Expected information of the test itself, bits. */
  readonly bits: number;
  /** Expected minutes to the end, by the two-step estimate. */
  readonly expectedMinutes: number;
}

export interface Grouping {
  /** Hypotheses of one class need not be told apart: one fix mends them all. */
  readonly classOf: readonly number[];
}

/** How many tests, best first by one step, are looked at two steps deep. */
const lookedAtDeeply = 8;
/** Less than this is no information worth a minute, bits. */
const worthless = 0.005;

/**
 * The next test: expected information per minute finds the candidates; of the best ones, the one with the least expected minutes
 * to the end over two steps is taken, for the test that tells most at once may leave the rest badly cut. Undefined where no test
 * tells anything more.
 */
export function nextTest(belief: Belief, tests: readonly Test[], { classOf }: Grouping): Choice | undefined {
  const useful = rated(belief, tests, classOf);
  const rate = Math.min(...useful.map(({ test }) => test.minutes));
  const deep = useful.slice(0, lookedAtDeeply).map(({ test, bits }) => ({
    test,
    bits,
    expectedMinutes: test.minutes + expected(belief, test, (then) => oneStep(then, tests, classOf, rate)),
  }));
  return deep.reduce<Choice | undefined>(
    (best, each) => (best && best.expectedMinutes <= each.expectedMinutes + 1e-12 ? best : each),
    undefined,
  );
}

/** Tests that tell something, most information per minute first. */
function rated(belief: Belief, tests: readonly Test[], classOf: readonly number[]) {
  return tests
    .map((test) => ({ test, bits: informationOf(belief, test, classOf) }))
    .filter(({ bits }) => bits > worthless)
    .sort((a, b) => b.bits / b.test.minutes - a.bits / a.test.minutes);
}

/** Expected fall of the entropy over classes, bits. */
export function informationOf(belief: Belief, test: Test, classOf: readonly number[]): number {
  return (
    entropy(weightsOf(belief, classOf)) - expected(belief, test, (then) => entropy(weightsOf(then, classOf)))
  );
}

/** The mean of a value over the outcomes of a test. */
function expected(belief: Belief, test: Test, value: (then: Belief) => number): number {
  let sum = 0;
  for (let outcome = 0; outcome < test.outcomes; outcome++) {
    const chance = chanceOf(belief, test.chances, outcome);
    const then = chance > 1e-12 ? posterior(belief, test.chances, outcome) : undefined;
    if (then) sum += chance * value(then);
  }
  return sum;
}

/** Minutes to the end from here, at the least: the best single test, then the shortest code over what it leaves. */
function oneStep(belief: Belief, tests: readonly Test[], classOf: readonly number[], rate: number): number {
  const code = (then: Belief) => rate * huffmanLength(weightsOf(then, classOf));
  if (code(belief) < 1e-9) return 0;
  let best = Infinity;
  for (const test of tests) {
    if (informationOf(belief, test, classOf) <= worthless) continue;
    best = Math.min(best, test.minutes + expected(belief, test, code));
  }
  return best === Infinity ? 0 : best;
}

export function weightsOf(belief: Belief, classOf: readonly number[]): readonly number[] {
  const weights: number[] = [];
  for (const [hypothesis, weight] of belief.entries()) {
    const group = classOf[hypothesis] ?? hypothesis;
    weights[group] = (weights[group] ?? 0) + weight;
  }
  return [...weights].map((each) => each ?? 0);
}
