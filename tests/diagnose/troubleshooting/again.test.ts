import { describe, expect, it } from 'vitest';
import { again, doubtOf, isDoubtful } from '../../../src/diagnose/troubleshooting/again.ts';
import { alikeRows, type Trial } from '../../../src/diagnose/troubleshooting/prospect.ts';

/** One look, wrong once in ten: a slip gives yes and no alike, so 0.05 each. Under the third cause it can be seen in half of the machines. */
const chances = [
  [0.95, 0.05],
  [0.05, 0.95],
  [0.5, 0.5],
];
const look: Trial = {
  name: 'lever',
  kind: 'hands',
  minutes: 1,
  mistaken: 0.1,
  slips: [0.05, 0.05],
  outcomes: 2,
  keys: ['yes', 'no'],
  chances,
  sameAs: alikeRows(chances),
};

// Expected values: Bayes' rule by hand.
describe('a deed done again', () => {
  it('counts for less than the first time: a mistake is made twice three times in ten', () => {
    const second = again(look, ['yes']);
    // Right the first time with 0.9, then 0.95 for yes; slipped onto it with 0.05, then 0.3 by habit and 0.7 x 0.95.
    expect(second.chances[0]?.[0]).toBeCloseTo((0.9 * 0.95 + 0.05 * 0.965) / 0.95, 10);
    // It can only have been a slip: 0.3 by habit and 0.7 x 0.05.
    expect(second.chances[1]?.[0]).toBeCloseTo(0.335, 10);
  });

  it('finds what there is to see as it was: only the slip is drawn anew', () => {
    // Seen in half of the machines, and told so: right with 0.45; slipped with 0.05, half onto the truth and half beside it.
    const yes = (0.45 * 0.95 + 0.025 * 0.965 + 0.025 * 0.335) / 0.5;
    expect(again(look, ['yes']).chances[2]?.[0]).toBeCloseTo(yes, 10);
  });

  it('that was answered yes and then no is open again, but for habit', () => {
    // Right, then a slip: 0.45 x 0.05; slips that hide a yes or a no, then no: 0.025 x 0.035 and 0.025 x 0.665.
    const [right, yes, no] = [0.45 * 0.05, 0.025 * 0.035, 0.025 * 0.665];
    const third = (right * 0.95 + yes * 0.965 + no * 0.335) / (right + yes + no);
    expect(again(look, ['yes', 'no']).chances[2]?.[0]).toBeCloseTo(third, 10);
  });

  it('is worth asking for where the answer stands against what is believed, and not where it agrees', () => {
    // Nearly sure of the first cause, a no is a slip nearly for certain; a yes is none.
    expect(doubtOf(look, 'no', [1, 0, 0])).toBeCloseTo(1, 10);
    expect(doubtOf(look, 'yes', [1, 0, 0])).toBeCloseTo(0, 10);
    expect(isDoubtful(look, 'no', [0.9, 0.1, 0])).toBe(true);
    expect(isDoubtful(look, 'yes', [0.96, 0.02, 0.02])).toBe(false);
  });
});
