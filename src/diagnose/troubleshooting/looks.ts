import type { Test } from './aims.ts';

/** A class for each of some hypotheses, counted from 0. */
export interface Classes {
  readonly of: Int32Array;
  readonly count: number;
}

/**
 * How everything looks to the tests that are left. Hypotheses that all of them would show alike are of one class: no minute is spent on
 * telling them apart. So are the degrees of one fault, unless one of them looks like something else.
 */
export class Looks {
  private readonly names: Int32Array;
  /** By test, for each hypothesis a number that stands for what the test would show. */
  private readonly numbers: readonly Float64Array[];
  /** For each hypothesis the sum over the tests that are left: equal sums, equal looks. */
  private readonly sums: Float64Array;

  constructor(names: readonly string[], tests: readonly Pick<Test, 'sameAs'>[]) {
    const ids = new Map<string, number>();
    this.names = Int32Array.from(names, (name) => {
      const id = ids.get(name) ?? ids.size;
      ids.set(name, id);
      return id;
    });
    this.numbers = tests.map(({ sameAs }, test) =>
      Float64Array.from(sameAs, (look) => scattered(test * 4096 + look)),
    );
    this.sums = new Float64Array(names.length);
    for (const test of this.numbers.keys()) this.putBack(test);
  }

  takeAway(test: number): void {
    this.add(test, -1);
  }

  putBack(test: number): void {
    this.add(test, 1);
  }

  /** The classes of some hypotheses among themselves. */
  classes(at: Int32Array): Classes {
    const several = -1;
    const nameOf = new Map<number, number>();
    for (const each of at) {
      const look = this.sums[each] ?? 0;
      const name = this.names[each] ?? 0;
      nameOf.set(look, (nameOf.get(look) ?? name) === name ? name : several);
    }
    const byLook = new Map<number, number>();
    const byName = new Map<number, number>();
    let count = 0;
    for (const [look, name] of nameOf) {
      const before = name === several ? undefined : byName.get(name);
      const group = before ?? count++;
      if (name !== several) byName.set(name, group);
      byLook.set(look, group);
    }
    return { of: Int32Array.from(at, (each) => byLook.get(this.sums[each] ?? 0) ?? 0), count };
  }

  private add(test: number, sign: 1 | -1): void {
    const numbers = this.numbers[test];
    if (!numbers) return;
    const { sums } = this;
    for (let i = 0; i < sums.length; i++) sums[i] = (sums[i] ?? 0) + sign * (numbers[i] ?? 0);
  }
}

/** A whole number below 2^46 that looks drawn by lot: sums of a few dozen are exact, and two of them are equal for equal looks only. */
function scattered(number: number): number {
  const mix = (from: number): number => {
    let mixed = Math.imul(from ^ (from >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return (mixed ^ (mixed >>> 16)) >>> 0;
  };
  const high = mix(number + 0x9e3779b9);
  return high * 2 ** 14 + (mix(high ^ number) >>> 18);
}
