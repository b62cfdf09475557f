import { describe, expect, it, vi } from 'vitest';
import type { Ask } from '../../src/model/ask.ts';
import { letters } from './corpus.ts';
import { eachNamed, retelling } from './retelling.ts';
import { drawnFrom, runSeed } from './run-seed.ts';
import { type LearnRun, learnOn } from './stand.ts';

vi.setConfig({ testTimeout: 120_000 });
const seed = runSeed + 500;
type Told = Record<string, unknown>;
const isTriple = (value: unknown): value is readonly number[] =>
  Array.isArray(value) && value.length === 3 && value.every((each) => typeof each === 'number');
const positionsIn = (report: Told): readonly number[] => Object.values(report).find(isTriple) ?? [];

const learn = (
  beside: (report: Told) => Told,
  says: (ask: Ask) => 'yes' | 'no' | undefined = () => undefined,
): Promise<LearnRun> =>
  learnOn({
    bench: { speak: eachNamed, seed, telling: { rate: 10 } },
    hands: { seed, saysInstead: says },
    through: retelling(seed, (told) => told, beside),
  });
const asked = ({ asks }: LearnRun) =>
  asks.flatMap((ask) => (ask.action === 'confirm' && ask.topic === 'which-position' ? [ask] : []));
const fieldsOf = ({ outcome }: LearnRun) => outcome.description.axes.map(({ at }) => at.field);

describe('machine and work coordinates in one stream', () => {
  /** A work zero somewhere on the table. */
  const work = (report: Told): Told => ({
    werk: positionsIn(report).map((each, i) => each - ([31.5, 12, -4][i] ?? 0)),
  });

  it('are asked about once for all axes, with both names', async () => {
    const run = await learn(work);
    expect(asked(run).length, drawnFrom(seed)).toBeGreaterThan(0);
    expect(asked(run)[0]?.axes).toEqual(letters);
    expect(asked(run)[0]?.shows?.some((each) => each.includes('werk'))).toBe(true);
  });

  it.each([true, false])(
    'are bound as the person confirms, work coordinates being the right ones: %s',
    async (isWork) => {
      const run = await learn(work, (ask) =>
        ask.action === 'confirm' && ask.topic === 'which-position'
          ? (ask.shows?.[0]?.includes('werk') ?? false) === isWork
            ? 'yes'
            : 'no'
          : undefined,
      );
      expect(
        fieldsOf(run).map((field) => field.includes('werk')),
        drawnFrom(seed),
      ).toEqual(letters.map(() => isWork));
    },
  );

  it('are bound to neither where the person cannot say', async () => {
    const run = await learn(work, (ask) =>
      ask.action === 'confirm' && ask.topic === 'which-position' ? 'no' : undefined,
    );
    expect(run.outcome.axesOpen, drawnFrom(seed)).toEqual(letters);
    expect(run.outcome.description.axes).toEqual([]);
  });
});

it('where an axis is sent is told from where it is: it jumps', async () => {
  let before: readonly number[] = [];
  let stood: readonly number[] = [];
  const run = await learn((report) => {
    const now = positionsIn(report);
    if (now.every((each, i) => each === before[i])) stood = now;
    before = now;
    return { zuletzt: stood };
  });
  expect(asked(run), drawnFrom(seed)).toEqual([]);
  expect(fieldsOf(run).some((field) => field.includes('zuletzt'))).toBe(false);
  expect(fieldsOf(run)).toHaveLength(letters.length);
});

it.each([
  ['micrometres', 1000, 0.001],
  ['steps of 1/160 mm', 160, 1 / 160],
  ['inches', 1 / 25.4, 25.4],
])('the scale follows from the distance asked for: %s', async (_, perMm, scale) => {
  const run = await learnOn({
    bench: { speak: { ...eachNamed, positions: 'none' }, seed, telling: { rate: 10 } },
    hands: { seed },
    through: (line) => [line],
  });
  expect(run.outcome.description.axes).toEqual([]);
  const scaled = await learnOn({
    bench: { speak: eachNamed, seed, telling: { rate: 10 } },
    hands: { seed },
    through: (line) => {
      const report = JSON.parse(line) as Told;
      const [place] = Object.entries(report).find(([, value]) => isTriple(value)) ?? [];
      if (place === undefined) return [line];
      return [
        JSON.stringify({
          ...report,
          [place]: positionsIn(report).map((each) => Number((each * perMm).toFixed(5))),
        }),
      ];
    },
  });
  expect(
    scaled.outcome.description.axes.map(({ letter }) => letter),
    drawnFrom(seed),
  ).toEqual(letters);
  for (const { at } of scaled.outcome.description.axes) {
    expect(at.scale).toBeGreaterThan(scale * 0.99);
    expect(at.scale).toBeLessThan(scale * 1.01);
  }
});
