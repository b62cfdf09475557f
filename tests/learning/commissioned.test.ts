import { expect, it } from 'vitest';
import { namedShapes } from '../../src/bench/speaking/shapes.ts';
import type { CheckName } from '../../src/model/verdict.ts';
import { remarksOf } from '../../src/session/learning/remarks.ts';
import { writeDescription } from '../../src/transport/stream/description/write.ts';
import { found, remove, temporaryFolder, virtualSession } from '../session/virtual-session.ts';
import { type Condition, conditions, learnt, shapeNames, shapeUnder } from './corpus.ts';
import { drawnFrom, runSeed } from './run-seed.ts';

/** A switch that still answers when its wire is broken, one that never does, two that answer in each other's place. */
const faults = ['broken-wire:y-far', 'crossed:x-home,x-far'];
/** What needs no more of a stream than its inputs. */
const checks: readonly CheckName[] = ['rest', 'press', 'open-wire', 'stop'];

async function verdicts(
  { rate = 20, damaged = 0 }: Condition,
  seed: number,
  learned?: { readonly name: string; readonly condition: Condition },
): Promise<readonly string[]> {
  const folder = temporaryFolder();
  const run = learned && (await learnt(learned.name, seed, learned.condition));
  const speak = learned && shapeUnder(learned.name, learned.condition);
  const outcome = await virtualSession({
    folder,
    hands: { seed },
    bench: {
      faults,
      seed,
      telling: { rate, levels: false },
      link: { damaged },
      ...(speak && { speak }),
    },
    session: {
      checks,
      presses: 2,
      ...(run && { streamText: writeDescription(run.outcome.description, remarksOf(run.outcome, 'test')) }),
    },
  });
  remove(folder);
  // What was lost on the way only the numbered native sentences can tell.
  return found(outcome).filter((each) => !/^\S+ stream: /.test(each));
}

const native = new Map<Condition, Promise<readonly string[]>>();
const nativeUnder = (condition: Condition): Promise<readonly string[]> => {
  const known = native.get(condition) ?? verdicts(condition, 1);
  native.set(condition, known);
  return known;
};

const usual: Condition = {};
/** Each shape as it is; and each condition on two shapes, others in every run. */
const shapeAt = (place: number): string => shapeNames[place % shapeNames.length] ?? '';
const cases = [
  ...shapeNames.map((name, i) => ['usual conditions', name, runSeed + i, usual] as const),
  ...Object.entries(conditions).flatMap(([what, condition], i) =>
    [2 * i, 2 * i + 1].map((each) => [what, shapeAt(runSeed + each), runSeed + each, condition] as const),
  ),
];

/**
 * A damaged report that something moves holds the request back until the person has answered again: such a stream may then have said
 * too little for a verdict, but never gives another one.
 */
const mayBeHeldBack = (name: string, { damaged = 0 }: Condition): boolean =>
  damaged > 0 && namedShapes[name]?.request !== undefined;

it.each(cases)(
  'with %s a commissioning on what was learned of %s finds what it finds on native sentences',
  { timeout: 240_000 },
  async (_, name, seed, condition) => {
    const found = await verdicts(condition, seed, { name, condition });
    const known = await nativeUnder(condition);
    const withoutEvidence = (verdict: string) =>
      found.find((each) => each.startsWith(verdict.replace(/: .*/, ': inconclusive')));
    const expected = mayBeHeldBack(name, condition)
      ? known.map((verdict) => withoutEvidence(verdict) ?? verdict)
      : known;
    expect(found, drawnFrom(seed)).toEqual(expected);
  },
);
