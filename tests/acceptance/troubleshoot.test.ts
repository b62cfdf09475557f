import { describe, expect, it } from 'vitest';
import { asksIn } from '../session/virtual-session.ts';
import { benchCauses, notInTheKnowledge } from './causes-of-bench-faults.ts';
import { causeIn, searched } from './searched.ts';

const keyOf = (cause: readonly string[]) => [...cause].sort().join();

describe('a search at the bench', () => {
  it.each(benchCauses)(
    'has the true cause of $plant among the named, because $because',
    async ({ plant, subject, cause }) => {
      const outcome = await searched({ subject, bench: { faults: [plant] } });
      const { causes, ended } = causeIn(outcome);
      expect(causes.map(keyOf)).toContain(keyOf(cause));
      expect(ended).toBe(causes.length === 1 ? 'named' : 'inseparable');
      // A list of everything names nothing.
      expect(causes.length).toBeLessThanOrEqual(6);
      expect(outcome.exit).not.toBe(0);
      expect(outcome.facts.register).toEqual([]);
    },
    120_000,
  );

  it.each(notInTheKnowledge)(
    'names no cause for $plant, for $because',
    async ({ plant }) => {
      const outcome = await searched({ bench: { faults: [plant] } });
      const { ended, causes } = causeIn(outcome);
      expect(ended).toBe('inseparable');
      expect(causes).toContainEqual([]);
    },
    120_000,
  );

  it.each([
    ['crossed:x-home,y-home', 'inputs-crossed', 'y-home'],
    ['shifted-plug:P1', 'plug-shifted', 'x-far'],
  ] as const)(
    'says of %s which other input it is, and asks for no more once the switch next to it has settled it',
    async (plant, cause, beside) => {
      const outcome = await searched({ bench: { faults: [plant] } });
      expect(causeIn(outcome)).toMatchObject({ causes: [[cause]], ended: 'named', beside });
      const asks = asksIn(outcome).map(({ ask }) => ask);
      const settled = asks.findIndex((ask) => ask.action === 'press' && ask.subject === beside);
      const after = asks.slice(settled + 1).map((ask) => ('topic' in ask ? ask.topic : ask.action));
      expect(after.filter((each) => each !== 'tap')).toEqual(['mended']);
      expect(asksIn(outcome).at(-1)?.text).toContain(beside);
    },
    120_000,
  );

  it('says of an input that the stream does not carry that it is not there, and names nothing', async () => {
    const { facts, exit } = await searched({ bench: { faults: ['not-reported:x-home'] } });
    const verdict = facts.verdicts.find(({ check }) => check === 'troubleshoot');
    expect(verdict?.findings).toEqual([{ kind: 'input-not-in-stream', input: 'x-home' }]);
    expect(verdict?.facts.cause).toBeUndefined();
    expect(exit).toBe(2);
  }, 120_000);

  it('never asks for power before the stop was shown to take it away', async () => {
    const sound = await searched({});
    const topics = asksIn(sound).map(({ ask }) => ('topic' in ask ? ask.topic : ask.action));
    for (const each of ['drives', 'spindle', 'axis']) expect(topics).not.toContain(each);
    expect(asksIn(sound).some(({ ask }) => ask.action === 'power' && ask.to === 'on')).toBe(false);
    expect(causeIn(sound).notDone.map(({ why }) => why)).toContain('stop-not-proved');
  }, 120_000);

  it('asks for power last, everyone clear first, and takes it away again, where the stop was proved', async () => {
    const asks = asksIn(await searched({ order: { stopProved: true } })).map(({ ask }) => ask);
    const on = asks.findIndex((ask) => ask.action === 'power' && ask.to === 'on');
    expect(on).toBeGreaterThan(0);
    expect(asks[on - 1]).toMatchObject({ action: 'confirm', topic: 'stop-area-clear' });
    expect(asks[on + 2]).toMatchObject({ action: 'power', what: 'motors', to: 'off' });
    expect(asks[on + 3]).toMatchObject({ action: 'confirm', topic: 'propped' });
    const meterAfter = asks.slice(on).some(({ action }) => action === 'measure' || action === 'jumper');
    expect(meterAfter).toBe(false);
  }, 120_000);
});
