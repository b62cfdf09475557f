import { expect, it } from 'vitest';
import { namedShapes } from '../../src/bench/speaking/shapes.ts';
import { remarksOf } from '../../src/session/learning/remarks.ts';
import { readDescription } from '../../src/transport/stream/description/read.ts';
import { writeDescription } from '../../src/transport/stream/description/write.ts';
import { found, remove, temporaryFolder, virtualSession } from '../session/virtual-session.ts';
import { papersOf } from './oracle.ts';
import { learnOn, scenarioMachine } from './stand.ts';
import { wrongIn } from './wrong-bindings.ts';

const inputs = scenarioMachine.inputs.map(({ name }) => name);
const letters = scenarioMachine.axes.map(({ letter }) => letter);
const seeds = Object.keys(namedShapes).map((name, i) => [name, i + 11] as const);

async function learnt(name: string, seed: number, rate = 20, damaged = 0) {
  const speak = namedShapes[name];
  if (!speak) throw new Error(name);
  const { request } = speak;
  const run = await learnOn({
    bench: { speak, seed, telling: { rate }, link: { damaged } },
    hands: { seed, saysInstead: papersOf(speak, inputs.length, letters.length, seed) },
    ...(request !== undefined && { request: { send: request, every: 50 } }),
  });
  return { ...run, wrong: wrongIn(run.outcome.description, speak, inputs, letters, seed) };
}

it.each(seeds)(
  'every input and axis of %s is bound, and to the right place',
  { timeout: 60_000 },
  async (name, seed) => {
    const { outcome, wrong } = await learnt(name, seed);
    expect(wrong).toEqual([]);
    expect(outcome.description.inputs.map((each) => each.name)).toEqual(inputs);
    expect(outcome.description.axes.map((each) => each.letter)).toEqual(letters);
    expect(outcome.accepted).toBe(true);
    const text = writeDescription(outcome.description, remarksOf(outcome, 'test'));
    expect(readDescription(text).description).toEqual(JSON.parse(JSON.stringify(outcome.description)));
  },
);

it.each(['pairs-hex-mask', 'json-word-set', 'line-each-word'])(
  'damaged lines, one in thirty-three, and five reports a second bind nothing wrong in %s',
  { timeout: 60_000 },
  async (name) => {
    for (const [rate, damaged] of [
      [20, 0.03],
      [5, 0],
    ] as const) {
      const { outcome, wrong } = await learnt(name, 5, rate, damaged);
      expect(wrong).toEqual([]);
      expect(outcome.description.inputs).toHaveLength(inputs.length);
    }
  },
);

it('machine and work coordinates are asked about, not guessed', { timeout: 60_000 }, async () => {
  const { asks } = await learnt('two-coordinates', 4);
  expect(asks.some((ask) => ask.action === 'confirm' && ask.topic === 'which-position')).toBe(true);
});

it.each(['pairs-figures', 'json-nested', 'brackets-signs'])(
  'a commissioning on the learned description of %s finds what it finds on native sentences',
  { timeout: 90_000 },
  async (name) => {
    const faults = ['broken-wire:y-far'];
    const { outcome } = await learnt(name, 8);
    const speak = namedShapes[name];
    const streamText = writeDescription(outcome.description, remarksOf(outcome, 'test'));
    const folders = [temporaryFolder(), temporaryFolder()] as const;
    const native = await virtualSession({
      folder: folders[0],
      bench: { faults, telling: { rate: 50, levels: false } },
    });
    const learned = await virtualSession({
      folder: folders[1],
      bench: { faults, seed: 8, telling: { rate: 50 }, ...(speak && { speak }) },
      session: { streamText },
    });
    folders.forEach(remove);
    expect(found(learned)).toEqual(found(native));
  },
);
