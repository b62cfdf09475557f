import type { Aims, Test } from './aims.ts';
import type { Belief } from './belief.ts';
import { Outlook } from './outlook.ts';

export interface Choice<Of extends Test = Test> {
  readonly test: Of;
  /** Expected information of the test itself, bits. */
  readonly bits: number;
}

/** How many tests, most information per minute first, are thought through to the end. */
const thoughtThrough = 5;
/** What is less likely to come about is guessed; the smaller, the deeper and the longer it is thought. */
const depths = [0.1, 0.02, 5e-3, 1e-3, 2e-4] as const;
/** Tests times hypotheses gone through, after which no deeper thought is begun: some ten milliseconds at most. */
const enough = 20_000;
/** So much better another test must be than the one that tells most a minute; a share of the minutes left. */
const clearly = 0.02;
/** Tests this much worse than the best are not thought through more deeply. */
const hopeless = 1.25;

/**
 * The next test, from the first tier in which any tells something: the one that tells most a minute, or another from which on the way
 * to the end is clearly shorter, for what tells most at once may leave the rest badly cut. Undefined where one cause is sure or no test
 * tells anything more. `belief` sums to 1. Pure: the same for the same arguments, however fast the computer is.
 */
export function nextTest<Of extends Test>(
  belief: Belief,
  tiers: readonly (readonly Of[])[],
  aims: Aims,
): Choice<Of> | undefined {
  const tests = tiers.flat();
  const outlook = new Outlook(belief, tiers, aims);
  const useful = outlook.useful(outlook.start);
  const [first] = useful;
  if (!first) return undefined;
  let best = first;
  let rivals = useful.slice(0, thoughtThrough);
  outlook.work = 0;
  for (const rarest of depths) {
    if (rivals.length < 2 || outlook.work > enough) break;
    const minutes = new Map(
      rivals.map((each) => [each, outlook.minutesWith(each.test, outlook.start, rarest)]),
    );
    const of = (each: typeof first): number => minutes.get(each) ?? Number.POSITIVE_INFINITY;
    const least = rivals.reduce((a, b) => (of(b) < of(a) ? b : a));
    best = of(first) <= of(least) * (1 + clearly) ? first : least;
    rivals = rivals.filter((each) => each === first || of(each) <= of(least) * hopeless);
  }
  const test = tests[best.test];
  return test && { test, bits: best.bits };
}

/** The tests that may be asked for now: of the first tier in which any tells something, unless one cause is sure already. */
export function usefulTests<Of extends Test>(
  belief: Belief,
  tiers: readonly (readonly Of[])[],
  aims: Aims,
): readonly Of[] {
  const tests = tiers.flat();
  const outlook = new Outlook(belief, tiers, aims);
  return outlook.useful(outlook.start).flatMap(({ test }) => tests[test] ?? []);
}
