import { expect, it } from 'vitest';
import { chanceOf, mutualInformation } from '../../../src/diagnose/learning/information.ts';

// R. A. Fisher, The Design of Experiments (1935), chapter II: eight cups, four of them with the milk first, told by taste.
it('all cups told right by chance alone: one in seventy', () => {
  expect(chanceOf({ both: 4, asked: 4, answered: 4, trials: 8 })).toBeCloseTo(1 / 70, 12);
});

it('three or four of four told right by chance alone: seventeen in seventy', () => {
  expect(chanceOf({ both: 3, asked: 4, answered: 4, trials: 8 })).toBeCloseTo(17 / 70, 12);
});

it('what never answers is chance', () => {
  expect(chanceOf({ both: 0, asked: 2, answered: 0, trials: 20 })).toBe(1);
});

// C. E. Shannon, A Mathematical Theory of Communication (1948), section 6: one bit for two equal chances, none between independent ones.
it('what follows half of all trials exactly tells one bit of them', () => {
  expect(mutualInformation({ both: 8, asked: 8, answered: 8, trials: 16 })).toBeCloseTo(1, 12);
});

it('what falls on asked and other trials alike tells nothing', () => {
  expect(mutualInformation({ both: 4, asked: 8, answered: 8, trials: 16 })).toBeCloseTo(0, 12);
});

// The entropy of one in four is 0.811278 bits, by the same section's formula.
it('what follows a quarter of all trials exactly tells as much as there is to know', () => {
  expect(mutualInformation({ both: 4, asked: 4, answered: 4, trials: 16 })).toBeCloseTo(0.811278, 6);
});
