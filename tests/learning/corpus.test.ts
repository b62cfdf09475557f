import { expect, it } from 'vitest';
import { remarksOf } from '../../src/session/learning/remarks.ts';
import { readDescription } from '../../src/transport/stream/description/read.ts';
import { writeDescription } from '../../src/transport/stream/description/write.ts';
import { learnt, shapeNames } from './corpus.ts';
import { drawnFrom, runSeed } from './run-seed.ts';

const seeds = shapeNames.map((name, i) => [name, runSeed + i] as const);

it('the corpus holds a dozen shapes and more', () => {
  expect(shapeNames.length).toBeGreaterThanOrEqual(12);
});

it.each(seeds)(
  'every input and axis of %s is bound, and to the right place',
  { timeout: 120_000 },
  async (name, seed) => {
    const { outcome, wrong, missing } = await learnt(name, seed);
    expect({ wrong, missing, accepted: outcome.accepted }, drawnFrom(seed)).toEqual({
      wrong: [],
      missing: [],
      accepted: true,
    });
    const text = writeDescription(outcome.description, remarksOf(outcome, 'test'));
    expect(readDescription(text).description).toEqual(JSON.parse(JSON.stringify(outcome.description)));
  },
);

it.each(seeds)(
  'what shows that %s moves is found, where moving can be heard',
  { timeout: 120_000 },
  async (name, seed) => {
    const { outcome } = await learnt(name, seed, { rate: 5 });
    const { activity, request } = outcome.description;
    // Nothing is written while an axis moves: who reports only when asked is silent then.
    expect(activity !== undefined, drawnFrom(seed)).toBe(request === undefined);
  },
);
