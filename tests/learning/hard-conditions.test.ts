import { describe, expect, it } from 'vitest';
import { conditions, learnt, shapeNames } from './corpus.ts';
import { drawnFrom, runSeed } from './run-seed.ts';

describe.each(Object.entries(conditions))('with %s', (_, condition) => {
  it.each(shapeNames.map((name, i) => [name, runSeed + 100 + i] as const))(
    'all of %s is bound to the right place',
    { timeout: 180_000 },
    async (name, seed) => {
      const { wrong, missing } = await learnt(name, seed, condition);
      expect({ wrong, missing }, drawnFrom(seed)).toEqual({ wrong: [], missing: [] });
    },
  );
});
