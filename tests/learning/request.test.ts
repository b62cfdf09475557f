import { expect, it, vi } from 'vitest';
import { namedShapes } from '../../src/bench/speaking/shapes.ts';
import { decodeEntry } from '../../src/transport/capture.ts';
import { drawnFrom, runSeed } from './run-seed.ts';
import { learnOn } from './stand.ts';

vi.setConfig({ testTimeout: 120_000 });
const seed = runSeed + 800;
const [speak, silent] = [namedShapes['pairs-figures'], namedShapes['when-asked']];
if (!speak || !silent) throw new Error('the corpus has both');

const entriesIn = (capture: readonly string[]) =>
  capture.flatMap((line) => decodeEntry(line.trimEnd()) ?? []);

it('nothing is ever written where the person gave no request', async () => {
  const { capture } = await learnOn({ bench: { speak, seed, telling: { rate: 5 } }, hands: { seed } });
  expect(
    entriesIn(capture).filter(({ kind }) => kind === 'tx'),
    drawnFrom(seed),
  ).toEqual([]);
});

it('the bytes of the person are written as given, no oftener than said, and not while an axis is being moved', async () => {
  const { capture, outcome } = await learnOn({
    bench: { speak: silent, seed },
    hands: { seed },
    request: { send: 'tell\n', every: 200 },
  });
  const written = entriesIn(capture).filter(({ kind }) => kind === 'tx');
  expect(new Set(written.map(({ text }) => text))).toEqual(new Set(['tell\n']));
  const gaps = written.slice(1).map(({ at }, i) => at - (written[i]?.at ?? 0));
  expect(Math.min(...gaps)).toBeGreaterThanOrEqual(200 - 0.001);
  // Six moves, each a second and a half and the time to begin it.
  expect(gaps.filter((gap) => gap > 1500).length, drawnFrom(seed)).toBe(6);
  expect(outcome.description.request).toEqual({ send: 'tell\n', every: 200 });
});

it('who reports only when asked is told so where nothing was asked', async () => {
  await expect(learnOn({ bench: { speak: silent, seed }, hands: { seed } })).rejects.toMatchObject({
    code: 'nothing-heard',
    tryNext: expect.stringContaining('--request'),
  });
});
