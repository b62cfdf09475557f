import { describe, expect, it } from 'vitest';
import type { Shape } from '../../src/bench/speaking/shape.ts';
import { inputs, letters } from './corpus.ts';
import { papersOf } from './oracle.ts';
import { drawnFrom, runSeed } from './run-seed.ts';
import { learnOn } from './stand.ts';
import { wrongIn } from './wrong-bindings.ts';

/** A report of the inputs and of nothing else, among lines of chatter: hardly anything says which lines are reports. */
const bare: Shape = {
  layout: 'json',
  inputs: 'set',
  positions: 'none',
  twice: false,
  activity: 'none',
  extras: 0,
  chatter: 0.3,
  reversed: false,
};

describe.each([
  ['a set of words that is often empty', bare],
  ['one character an input, in a line without a name', { ...bare, layout: 'columns', inputs: 'capitals' }],
] satisfies [string, Shape][])('of a report that is %s and nothing else', (_, speak) => {
  it.each([0, 1])('all inputs are bound, and chatter is no report (drawn %i)', async (drawn) => {
    const seed = runSeed + 900 + drawn;
    const { outcome } = await learnOn({
      bench: { speak, seed, telling: { rate: 10 } },
      hands: { seed, saysInstead: papersOf(speak, inputs.length, letters.length, seed) },
    });
    const { description } = outcome;
    const wrong = wrongIn(description, speak, inputs, letters, seed);
    expect({ wrong, bound: description.inputs.length }, drawnFrom(seed)).toEqual({
      wrong: [],
      bound: inputs.length,
    });
  });
});
