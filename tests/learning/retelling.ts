import type { Shape, Snapshot } from '../../src/bench/speaking/shape.ts';
import { namedShapes } from '../../src/bench/speaking/shapes.ts';
import { speakerFor } from '../../src/bench/speaking/speaker.ts';
import { inputs, letters } from './corpus.ts';

const flat = namedShapes['json-flat'];
if (!flat) throw new Error('the corpus has no json-flat');
/** Every input under a name of its own, in one JSON object: easy to take something out of, or to put in. */
export const eachNamed: Shape = { ...flat, inputs: 'figure-each', chatter: 0 };

type Told = Record<string, unknown>;
const isObject = (value: unknown): value is Told =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const stillReport = (active: readonly string[]): Snapshot => ({
  inputs: inputs.map((name) => active.includes(name)),
  positions: letters.map(() => 0),
  activity: 'still',
  ms: 1,
  seq: 1,
});

/** Where a controller that speaks so, in words drawn by this seed, tells of each input. */
export function keysOf(seed: number): { readonly group: string; readonly of: ReadonlyMap<string, string> } {
  const objectFor = (active: readonly string[]): Told => {
    const [line = ''] = speakerFor(eachNamed, inputs.length, letters.length, seed)(stillReport(active));
    return JSON.parse(line) as Told;
  };
  const groups = Object.entries(objectFor([])).filter(([, value]) => isObject(value));
  const [group = ''] = groups.map(([key]) => key);
  const keyFor = (name: string): string => {
    const told = objectFor([name])[group];
    return Object.entries(isObject(told) ? told : {}).find(([, value]) => value === 1)?.[0] ?? '';
  };
  return { group, of: new Map(inputs.map((name) => [name, keyFor(name)])) };
}

/** Rewrites what each report tells of the inputs, and what it tells beside. */
export function retelling(
  seed: number,
  rewrite: (told: Record<string, number>, keyOf: (input: string) => string) => Told | undefined,
  beside: (report: Told) => Told = () => ({}),
): (line: string) => readonly string[] {
  const { group, of } = keysOf(seed);
  const keyOf = (input: string) => of.get(input) ?? '';
  return (line) => {
    const report = JSON.parse(line) as Told;
    const told = rewrite({ ...(report[group] as Record<string, number>) }, keyOf);
    const { [group]: _, ...rest } = report;
    return [JSON.stringify({ ...(told && { [group]: told }), ...rest, ...beside(report) })];
  };
}
