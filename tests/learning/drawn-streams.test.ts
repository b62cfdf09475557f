import { expect, it } from 'vitest';
import { randomFor } from '../../src/bench/random.ts';
import { shapeDrawn } from '../../src/bench/speaking/shapes.ts';
import { papersOf } from './oracle.ts';
import { learnOn, scenarioMachine } from './stand.ts';
import { wrongIn } from './wrong-bindings.ts';

const inputs = scenarioMachine.inputs.map(({ name }) => name);
const letters = scenarioMachine.axes.map(({ letter }) => letter);
/** 12 in the usual run; as many as scripts/measure-learn.mjs asks for. */
const streams = Number(process.env['DRAWN_STREAMS'] ?? 12);

it(`of ${streams} streams drawn from all shapes none is bound wrongly`, {
  timeout: streams * 15_000,
}, async () => {
  const count = { bound: 0, asked: 0, refused: 0 };
  const wrong: string[] = [];
  for (let seed = 1; seed <= streams; seed++) {
    const random = randomFor(seed, 'shape');
    const speak = shapeDrawn(random);
    const rate = [5, 10, 20][Math.floor(random.next() * 3)] ?? 10;
    const { outcome, asks } = await learnOn({
      bench: { speak, seed, telling: { rate }, link: { damaged: random.happens(0.4) ? 0.03 : 0 } },
      hands: { seed, saysInstead: papersOf(speak, inputs.length, letters.length, seed) },
    });
    const { description } = outcome;
    wrong.push(...wrongIn(description, speak, inputs, letters, seed).map((each) => `${seed} ${each}`));
    const things = inputs.length + (speak.positions === 'none' ? 0 : letters.length);
    count.bound += description.inputs.length + description.axes.length;
    count.refused += things - description.inputs.length - description.axes.length;
    count.asked += asks.filter((ask) => ask.action === 'confirm' && ask.topic.startsWith('which')).length;
  }
  const all = count.bound + count.refused;
  process.stdout.write(
    `streams ${streams}: bound ${((100 * count.bound) / all).toFixed(1)} %, refused ${((100 * count.refused) / all).toFixed(1)} %, questions asked ${count.asked}, wrong ${wrong.length}\n`,
  );
  expect(wrong).toEqual([]);
  expect(count.bound).toBeGreaterThan(all * 0.9);
});
