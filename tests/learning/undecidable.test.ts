import { describe, expect, it, vi } from 'vitest';
import type { Ask } from '../../src/model/ask.ts';
import { remarksOf, summaryLines } from '../../src/session/learning/remarks.ts';
import { writeDescription } from '../../src/transport/stream/description/write.ts';
import { inputs } from './corpus.ts';
import { eachNamed, retelling } from './retelling.ts';
import { drawnFrom, runSeed } from './run-seed.ts';
import { type LearnRun, learnOn } from './stand.ts';

vi.setConfig({ testTimeout: 120_000 });
const seed = runSeed + 300;
type Says = (ask: Ask) => 'yes' | 'no' | 'not-sure' | undefined;
const isAbout = (ask: Ask, topic: string) => ask.action === 'confirm' && ask.topic === topic;
const answering =
  (topic: string, answer: 'yes' | 'no' | 'not-sure'): Says =>
  (ask) =>
    isAbout(ask, topic) ? answer : undefined;

const learn = (
  through: (line: string) => readonly string[],
  says: Says = () => undefined,
): Promise<LearnRun> =>
  learnOn({
    bench: { speak: eachNamed, seed, telling: { rate: 10 } },
    hands: { seed, saysInstead: says },
    through,
  });
const asksAbout = ({ asks }: LearnRun, topic: string) => asks.filter((ask) => isAbout(ask, topic));
const boundIn = ({ outcome }: LearnRun) => outcome.description.inputs.map(({ name }) => name);
const without = (...names: readonly string[]) => inputs.filter((name) => !names.includes(name));

describe('two fields that follow one input', () => {
  const twice = retelling(seed, (told, keyOf) => ({ ...told, zwifel: told[keyOf('probe')] ?? 0 }));

  it('are asked about with both their names', async () => {
    const run = await learn(twice, answering('which-value', 'yes'));
    const [ask, ...more] = asksAbout(run, 'which-value');
    expect(more, drawnFrom(seed)).toEqual([]);
    expect(ask).toMatchObject({ subject: 'probe', shows: [expect.any(String), expect.any(String)] });
    expect(ask?.action === 'confirm' && 'shows' in ask && ask.shows?.join(' ')).toContain('zwifel');
    expect(boundIn(run)).toEqual(inputs);
  });

  it.each(['no', 'not-sure'] as const)('are left alone where the answer is %s', async (answer) => {
    const run = await learn(twice, answering('which-value', answer));
    expect(boundIn(run), drawnFrom(seed)).toEqual(without('probe'));
    expect(run.outcome.settled.open.get('probe')).toBe('tie');
  });

  it('are read from the one that is confirmed, though it be the second', async () => {
    let asked = 0;
    const run = await learn(twice, (ask) =>
      isAbout(ask, 'which-value') ? (asked++ > 0 ? 'yes' : 'no') : undefined,
    );
    const [first, second] = asksAbout(run, 'which-value').map((ask) => ('shows' in ask ? ask.shows : []));
    const probe = run.outcome.description.inputs.find(({ name }) => name === 'probe');
    expect(first?.[1], drawnFrom(seed)).toBe(second?.[0]);
    expect(second?.[0]?.startsWith(probe?.at.field ?? '?')).toBe(true);
  });
});

describe('two inputs that always move together', () => {
  const joined = retelling(seed, (told, keyOf) => {
    const [one, other] = [keyOf('x-home'), keyOf('x-far')];
    const either = (told[one] ?? 0) | (told[other] ?? 0);
    return { ...told, [one]: either, [other]: either };
  });

  it('are never bound to one of two fields without being asked about', async () => {
    const run = await learn(joined, (ask) =>
      isAbout(ask, 'together') || isAbout(ask, 'which-value') ? 'no' : undefined,
    );
    expect(asksAbout(run, 'together'), drawnFrom(seed)).toMatchObject([{ shows: ['x-home', 'x-far'] }]);
    expect(boundIn(run)).toEqual(without('x-home', 'x-far'));
    expect(run.outcome.settled.open.get('x-far')).toBe('together');
  });

  it('are bound to one value where they share an input of the controller', async () => {
    const shared = retelling(seed, (told, keyOf) => {
      const { [keyOf('x-home')]: home = 0, [keyOf('x-far')]: far = 0, ...rest } = told;
      return { ...rest, gemein: home | far };
    });
    const run = await learn(shared, answering('together', 'yes'));
    const fields = run.outcome.description.inputs
      .filter(({ name }) => /^x-/.test(name))
      .map(({ at }) => at.field);
    expect(
      fields.map((each) => each.endsWith('gemein')),
      drawnFrom(seed),
    ).toEqual([true, true]);
  });
});

describe('an input that is not in the stream', () => {
  it('is told so, and all others are bound', async () => {
    const run = await learn(
      retelling(seed, (told, keyOf) => {
        const { [keyOf('z-home')]: _, ...rest } = told;
        return rest;
      }),
    );
    expect(boundIn(run), drawnFrom(seed)).toEqual(without('z-home'));
    expect([...run.outcome.settled.open]).toEqual([['z-home', 'not-in-stream']]);
    expect(summaryLines(run.outcome).join()).toContain('z-home: not in this stream');
  });

  it('is told from one that something follows, but not alone', async () => {
    const run = await learn(
      retelling(seed, (told, keyOf) => {
        const { [keyOf('z-home')]: _, ...rest } = told;
        return { ...rest, jedes: Object.values(told).some((each) => each === 1) ? 1 : 0 };
      }),
    );
    expect(boundIn(run), drawnFrom(seed)).toEqual(without('z-home'));
    expect([...run.outcome.settled.open]).toEqual([['z-home', 'not-learned']]);
    expect(summaryLines(run.outcome).join()).toContain('z-home: not learned: something changed');
  });
});

describe('a stream that shows no inputs', () => {
  const none = retelling(seed, () => undefined);

  it('is said so after three presses, with what a controller must report, and no axis is moved for it', async () => {
    const run = await learn(none, answering('nothing-changed', 'no'));
    const presses = run.asks.filter(({ action }) => action === 'press');
    expect(presses, drawnFrom(seed)).toHaveLength(3);
    expect(asksAbout(run, 'nothing-changed')).toHaveLength(1);
    expect(run.asks.some(({ action }) => action === 'move')).toBe(false);
    const text = writeDescription(run.outcome.description, remarksOf(run.outcome, 'test'));
    expect(text).toContain(
      'The controller must report the level or the active state of each input (firmware-notes)',
    );
    expect(text).toContain('doors: not learned: it was not pressed');
  });

  it('is pressed to the end of one round where the person thinks that inputs should be in it', async () => {
    const run = await learn(none, answering('nothing-changed', 'yes'));
    expect(
      run.asks.filter(({ action }) => action === 'press'),
      drawnFrom(seed),
    ).toHaveLength(inputs.length);
    expect(new Set(run.outcome.settled.open.values())).toEqual(new Set(['not-in-stream']));
    expect(run.outcome.accepted).toBe(false);
  });
});
