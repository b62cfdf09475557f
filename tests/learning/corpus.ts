import { namedShapes } from '../../src/bench/speaking/shapes.ts';
import { papersOf } from './oracle.ts';
import { type LearnRun, learnOn, scenarioMachine } from './stand.ts';
import { wrongIn } from './wrong-bindings.ts';

export const inputs = scenarioMachine.inputs.map(({ name }) => name);
export const letters = scenarioMachine.axes.map(({ letter }) => letter);
export const shapeNames = Object.keys(namedShapes);

/** What makes a stream hard to learn. */
export interface Condition {
  /** Reports a second. */
  readonly rate?: number;
  /** Share of the lines that arrive with a wrong byte. */
  readonly damaged?: number;
  /** Lines about nothing for each report. */
  readonly chatter?: number;
  /** How many times as long as usual the person takes. */
  readonly pace?: number;
}

export const conditions: Readonly<Record<string, Condition>> = {
  'one line in 33 damaged': { damaged: 0.03, rate: 10 },
  'two lines of chatter for each report': { chatter: 2, rate: 10 },
  'five reports a second': { rate: 5 },
  'a person five times as slow': { pace: 5, rate: 10 },
};

/** The shape of this name under a condition. */
export function shapeUnder(name: string, { chatter }: Condition) {
  const shape = namedShapes[name];
  if (!shape) throw new Error(name);
  return { ...shape, ...(chatter !== undefined && { chatter }) };
}

/** Learns a shape of the corpus and tells what is wrong or missing in what was learned. */
export async function learnt(
  name: string,
  seed: number,
  condition: Condition = {},
): Promise<LearnRun & { readonly wrong: readonly string[]; readonly missing: readonly string[] }> {
  const { rate = 20, damaged = 0, pace = 1 } = condition;
  const speak = shapeUnder(name, condition);
  const run = await learnOn({
    bench: { speak, seed, telling: { rate }, link: { damaged } },
    hands: { seed, saysInstead: papersOf(speak, inputs.length, letters.length, seed) },
    pace,
    ...(speak.request !== undefined && { request: { send: speak.request, every: 1000 / rate } }),
  });
  const { description } = run.outcome;
  const bound = [
    ...description.inputs.map((each) => each.name),
    ...description.axes.map((each) => each.letter),
  ];
  return {
    ...run,
    wrong: wrongIn(description, speak, inputs, letters, seed),
    missing: [...inputs, ...letters].filter((each) => !bound.includes(each)),
  };
}
