import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Test } from '../../../src/diagnose/troubleshooting/aims.ts';
import {
  type Belief,
  chanceOf,
  entropy,
  normalised,
  posterior,
} from '../../../src/diagnose/troubleshooting/belief.ts';
import { nextTest } from '../../../src/diagnose/troubleshooting/chooser.ts';
import { huffmanLength } from './huffman.ts';

const binary = (name: string, column: string): Test => ({
  name,
  minutes: 1,
  outcomes: 2,
  chances: [...column].map((bit) => (bit === '1' ? [0, 1] : [1, 0])),
  sameAs: [...column].map(Number),
});

// Pattipati and Alexandridis, IEEE Trans. SMC 20 (1990) 872-887: six states, five tests of unit cost, optimum 2.18 (matrix from memory, arithmetic confirmed independently).
const prior = [0.7, 0.01, 0.02, 0.1, 0.05, 0.12];
const rows = ['00000', '01001', '00110', '10011', '11000', '11110'];
const published = [0, 1, 2, 3, 4].map((test) =>
  binary(`t${test + 1}`, rows.map((row) => row[test]).join('')),
);
const each = { names: ['s0', 's1', 's2', 's3', 's4', 's5'] };

/** The exact optimum by dynamic programming over the sets of hypotheses still possible; costs and chances are the test's own. */
function optimum(belief: Belief, tests: readonly Test[], known = new Map<string, number>()): number {
  const key = belief.map((weight) => (weight > 0 ? 1 : 0)).join('');
  if (belief.filter((weight) => weight > 0).length <= 1) return 0;
  const before = known.get(key);
  if (before !== undefined) return before;
  const best = Math.min(
    ...tests.map((test) => {
      const left = [0, 1].map((outcome) => posterior(belief, test.chances, outcome));
      if (left.some((each) => !each)) return Infinity;
      return left.reduce(
        (sum, each, outcome) =>
          sum + chanceOf(belief, test.chances, outcome) * (each ? optimum(each, tests, known) : 0),
        test.minutes,
      );
    }),
  );
  known.set(key, best);
  return best;
}

/** What following the chooser costs on average. */
function followed(
  belief: Belief,
  tests: readonly Test[],
  choose = (now: Belief) => nextTest(now, [tests], each)?.test,
): number {
  const test = belief.filter((weight) => weight > 0).length > 1 ? choose(belief) : undefined;
  if (!test) return 0;
  let cost = test.minutes;
  for (let outcome = 0; outcome < test.outcomes; outcome++) {
    const then = posterior(belief, test.chances, outcome);
    if (then) cost += chanceOf(belief, test.chances, outcome) * followed(then, tests, choose);
  }
  return cost;
}

describe('the order of tests', () => {
  it('costs 2.18 tests at best on the published example, and one-step greed costs 2.86', () => {
    expect(optimum(prior, published)).toBeCloseTo(2.18, 10);
    const gain = (belief: Belief, test: Test) =>
      entropy(belief) -
      [0, 1].reduce(
        (sum, outcome) =>
          sum +
          chanceOf(belief, test.chances, outcome) * entropy(posterior(belief, test.chances, outcome) ?? [1]),
        0,
      );
    const greedy = (belief: Belief) => [...published].sort((a, b) => gain(belief, b) - gain(belief, a))[0];
    expect(followed(prior, published, greedy)).toBeCloseTo(2.86, 10);
  });

  it('comes within a tenth of the optimum on the published example', () => {
    expect(followed(prior, published)).toBeLessThanOrEqual(2.18 * 1.1);
  });

  it('depends neither on the names nor on the order of tests and states', () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray([0, 1, 2, 3, 4], { minLength: 5 }),
        fc.shuffledSubarray([0, 1, 2, 3, 4, 5], { minLength: 6 }),
        (order, states) => {
          const tests = order.map((test) =>
            binary(`x${test}`, states.map((state) => rows[state]?.[test]).join('')),
          );
          const belief = states.map((state) => prior[state] ?? 0);
          expect(followed(belief, tests)).toBeLessThanOrEqual(2.18 * 1.1);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('never beats the bounds of entropy and Huffman code', () => {
    // Same source: entropy 1.454873 bits, Huffman length 1.59 (computed independently).
    expect(entropy(prior)).toBeCloseTo(1.454873, 6);
    expect(huffmanLength(prior)).toBeCloseTo(1.59, 10);
    expect(followed(prior, published)).toBeGreaterThanOrEqual(1.59);
    // MacKay, Information Theory, exercise 5.15; Cover and Thomas 5.6; CLRS 16.3 (from memory, arithmetic confirmed).
    expect(huffmanLength([0.25, 0.25, 0.2, 0.15, 0.15])).toBeCloseTo(2.3, 10);
    expect(entropy([0.25, 0.25, 0.2, 0.15, 0.15])).toBeCloseTo(2.285475, 6);
    expect(huffmanLength([1 / 2, 1 / 4, 1 / 8, 1 / 8])).toBeCloseTo(1.75, 10);
    expect(huffmanLength([45, 13, 12, 16, 9, 5])).toBe(224);
  });

  it('begins with the least cost per chance where each test finds one fault', () => {
    // Rule of Kalagnanam and Henrion: ascending cost over probability. Own numbers: 3.70 for the order 2, 3, 1.
    const costs = [4, 1, 1];
    const tests = costs.map((minutes, found) => ({
      ...binary(`fault ${found}`, [0, 1, 2].map((state) => (state === found ? '1' : '0')).join('')),
      minutes,
    }));
    expect(nextTest([0.5, 0.3, 0.2], [tests], { names: ['a', 'b', 'c'] })?.test.name).toBe('fault 1');
  });
});

describe('belief', () => {
  it('follows Bayes in the published screening problems', () => {
    // Eddy 1982: 1 % prior, 80 % found, 9.6 % false alarms -> 7.76 %; Gigerenzer: 1 %, 90 %, 9 % -> 9.17 %.
    const screening = (found: number, false_: number) => [
      [1 - found, found],
      [1 - false_, false_],
    ];
    const eddy = screening(0.8, 0.096);
    expect(posterior([0.01, 0.99], eddy, 1)?.[0]).toBeCloseTo(0.0776397516, 9);
    expect(posterior([0.01, 0.99], eddy, 0)?.[0]).toBeCloseTo(0.00223, 5);
    expect(posterior(posterior([0.01, 0.99], eddy, 1) ?? [], eddy, 1)?.[0]).toBeCloseTo(0.412269, 6);
    expect(posterior([0.01, 0.99], screening(0.9, 0.09), 1)?.[0]).toBeCloseTo(0.0917431193, 9);
  });

  it('gives the published posterior after the second test of the example fails', () => {
    const then = posterior(prior, published[1]?.chances ?? [], 1)?.map(
      (weight) => Math.round(weight * 1e6) / 1e6,
    );
    expect(then).toEqual([0, 0.055556, 0, 0, 0.277778, 0.666667]);
  });

  it('refuses a belief in which everything is excluded', () => {
    expect(() => normalised([0, 0])).toThrow(RangeError);
  });
});
