import type { Aims, Test } from './aims.ts';
import type { Belief } from './belief.ts';
import { type Column, sumOf, type Table, tableOf } from './columns.ts';
import { Informer, openIn, type Spread } from './information.ts';
import { Looks } from './looks.ts';

/** Less than this is no information worth a minute, bits. */
const worthless = 0.005;
/** Hypotheses this unlikely change no choice: at the start, and beside the others after an outcome. */
const unlikely = 1e-6;
const unlikelyThen = 1e-4;

/** What is that much less likely than what is followed is guessed in one stroke. */
const negligible = 0.1;

/** Where a search may come to stand: the hypotheses that still count, how likely each is together with having come here. */
export type Standing = Spread;

/** A test by its number, with its expected information. */
export interface Rated {
  readonly test: number;
  readonly bits: number;
  readonly minutes: number;
}

/** What lies ahead of a search: for any outcomes of any tests, what is then worth asking and how long it still takes. */
export class Outlook {
  readonly start: Standing;
  /** Tests times hypotheses gone through so far: how much was thought over. */
  work = 0;
  private readonly tests: readonly Test[];
  private readonly tables: readonly Table[];
  /** The numbers of the tests of each tier that are left. */
  private readonly left: readonly Set<number>[];
  private readonly looks: Looks;
  private readonly sure: number;
  private readonly minutesABit: number;
  private readonly informer = new Informer();

  constructor(belief: Belief, tiers: readonly (readonly Test[])[], { names, sure = 1 }: Aims) {
    this.tests = tiers.flat();
    this.tables = this.tests.map(({ chances, outcomes }) => tableOf(chances, outcomes));
    let next = 0;
    this.left = tiers.map((tier) => new Set(tier.map(() => next++)));
    this.looks = new Looks(names, this.tests);
    this.sure = sure;
    const weights = Float64Array.from(belief);
    this.start = this.standing(
      Int32Array.from(weights.keys()).filter((at) => (weights[at] ?? 0) > unlikely),
      weights,
    );
    this.minutesABit = this.guessed(this.start, this.useful(this.start)) / openIn(this.start);
  }

  isSure({ sums, total }: Standing): boolean {
    return sums.some((each) => each >= this.sure * total);
  }

  /** Tests that tell something, most information a minute first; of the first tier that has any. */
  useful(now: Standing): readonly Rated[] {
    if (this.isSure(now)) return [];
    this.informer.lookAt(now);
    for (const tier of this.left) {
      this.work += tier.size * now.at.length;
      const telling = [...tier]
        .flatMap((test) => {
          const table = this.tables[test];
          return table
            ? [{ test, bits: this.informer.bitsOf(table), minutes: this.tests[test]?.minutes ?? 0 }]
            : [];
        })
        .filter(({ bits }) => bits > worthless)
        .sort((a, b) => b.bits / b.minutes - a.bits / a.minutes);
      if (telling.length > 0) return telling;
    }
    return [];
  }

  /**
   * Expected minutes to the end with this test first, then always the one that tells most a minute. What is less likely than `rarest`
   * to come about is guessed, not followed.
   */
  minutesWith(test: number, now: Standing, rarest: number): number {
    const { minutes = 0 } = this.tests[test] ?? {};
    const tier = this.left.find((each) => each.delete(test));
    this.looks.takeAway(test);
    let later = 0;
    let followed = 0;
    for (const column of this.tables[test]?.columns ?? []) {
      const then = this.after(now, column);
      followed += then.total;
      if (then.total > 0) later += then.total * this.minutesFrom(then, rarest);
    }
    this.looks.putBack(test);
    tier?.add(test);
    return followed > 0 ? minutes + later / followed : minutes;
  }

  private minutesFrom(now: Standing, rarest: number): number {
    if (now.total < rarest * negligible && !this.isSure(now)) return openIn(now) * this.minutesABit;
    const useful = this.useful(now);
    const [first] = useful;
    if (!first) return 0;
    return now.total < rarest ? this.guessed(now, useful) : this.minutesWith(first.test, now, rarest);
  }

  /** As if the tests, the best first, told what they tell one beside the other until nothing is open. */
  private guessed(now: Standing, useful: readonly Rated[]): number {
    let open = openIn(now);
    let sum = 0;
    for (const { bits, minutes } of useful) {
      sum += minutes * Math.min(1, open / bits);
      open -= bits;
      if (open <= 0) break;
    }
    return Math.max(sum, useful[0]?.minutes ?? 0);
  }

  private after({ at, weight }: Standing, column: Column): Standing {
    const joint = new Float64Array(at.length);
    let total = 0;
    for (let i = 0; i < at.length; i++) {
      joint[i] = (weight[i] ?? 0) * (column[at[i] ?? 0] ?? 0);
      total += joint[i] ?? 0;
    }
    const least = total * unlikelyThen;
    const kept = at.filter((_, i) => (joint[i] ?? 0) > least);
    return this.standing(
      kept,
      joint.filter((each) => each > least),
    );
  }

  /** `weights`: of these hypotheses, or of all. */
  private standing(at: Int32Array, weights: Float64Array): Standing {
    const weight =
      weights.length === at.length ? weights : Float64Array.from(at, (each) => weights[each] ?? 0);
    const { of, count } = this.looks.classes(at);
    const sums = new Float64Array(count);
    for (let i = 0; i < at.length; i++) sums[of[i] ?? 0] = (sums[of[i] ?? 0] ?? 0) + (weight[i] ?? 0);
    return { at, weight, total: sumOf(weight), of, sums };
  }
}
