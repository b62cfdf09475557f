import { expect, it } from 'vitest';
import { randomFor } from '../../src/bench/random.ts';
import type { Shape, Snapshot } from '../../src/bench/speaking/shape.ts';
import { namedShapes, shapeDrawn } from '../../src/bench/speaking/shapes.ts';
import { speakerFor } from '../../src/bench/speaking/speaker.ts';
import { runSeed } from './run-seed.ts';

const activities = ['still', 'moving', 'homing', 'fault'] as const;
const snapshots: readonly Snapshot[] = activities.flatMap((activity, i) =>
  [false, true].map((active) => ({
    inputs: Array.from({ length: 8 }, (_, k) => active && k % 3 === i % 3),
    positions: [12.5 * i, -7.25, 0.125],
    activity,
    ms: 1000 * i,
    seq: i,
  })),
);

const number = String.raw`[-+]?\d+(?:\.\d+)?(?:[a-z]{1,4})?`;
/** Looks of streams that are others': ours must be our own. */
const marks: Readonly<Record<string, RegExp>> = {
  'angle brackets with upright bars': /<[^>]*\|/,
  'a state word, then a triple of positions, then active letters': new RegExp(
    String.raw`^\W*[A-Za-z]+\W+(?:[A-Za-z]+\W+)?${number}[,/ ]${number}[,/ ]${number}.*\W[A-Za-z]{1,8}\W*$`,
  ),
  'numbered faults': /\b(?:alarm|error|fault)\s*[:#]?\s*\d/i,
  'positions as letter and number before a step count':
    /\b[A-Z]:\s*[-+]?\d+(?:\.\d+)?.*\b(?:count|steps?)\b/i,
  'a word of unlocking': /unlock/i,
};

const linesOf = (shape: Shape, seed: number): readonly string[] => {
  const speak = speakerFor(shape, 8, 3, seed);
  return snapshots.flatMap(speak);
};

const drawn = Array.from({ length: 400 }, (_, i): [string, Shape, number] => {
  const seed = runSeed + i;
  return [`drawn ${seed}`, shapeDrawn(randomFor(seed, 'shape')), seed];
});
const named = Object.entries(namedShapes).flatMap(([name, shape]) =>
  Array.from({ length: 20 }, (_, i): [string, Shape, number] => [name, shape, runSeed + i]),
);

it.each(Object.entries(marks))('no invented stream shows %s', (mark, form) => {
  const found = [...named, ...drawn].flatMap(([name, shape, seed]) =>
    linesOf({ ...shape, chatter: 0 }, seed)
      .filter(
        (line) => form.test(line) && !(mark.startsWith('a state word') && !isStateFirst(shape, seed, line)),
      )
      .map((line) => `${name} ${seed}: ${line}`),
  );
  expect(found).toEqual([]);
});

/** Whether the line's first word is what the stream calls its activity, and its last what it calls its inputs. */
function isStateFirst(shape: Shape, seed: number, line: string): boolean {
  if (shape.inputs !== 'capitals' && shape.inputs !== 'set') return false;
  const speak = speakerFor({ ...shape, chatter: 0 }, 8, 3, seed);
  const at = (activity: Snapshot['activity']) => speak({ ...snapshots[0], activity } as Snapshot).join('\n');
  const [still = '', moving = ''] = [at('still'), at('moving')];
  const differs = [...still].findIndex((character, i) => character !== moving[i]);
  return line.length > 0 && differs >= 0 && differs < 16;
}

it('no invented stream shows inputs as single letters that vanish', () => {
  for (const [name, shape, seed] of [...named, ...drawn])
    for (const line of linesOf({ ...shape, chatter: 0 }, seed))
      if (shape.inputs === 'set')
        expect(line, `${name} ${seed}`).not.toMatch(/(?:^|[=:+,"[( ])[A-Z](?:[+,"\]) ]|$)/);
});

it('no request is a lone question mark', () => {
  for (const { request } of Object.values(namedShapes)) expect(request?.trim()).not.toBe('?');
});

it('each mark is known where it stands', () => {
  const examples = ['<kap|1.0,2.0>', 'klip 1.0,2.0,3.0 brA', 'fault: 7', 'X:1.00 Y:2.00 count', 'unlock'];
  for (const [i, form] of Object.values(marks).entries()) expect(examples[i]).toMatch(form);
});
