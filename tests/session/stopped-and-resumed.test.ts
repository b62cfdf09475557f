import { describe, expect, it } from 'vitest';
import type { FaceEvent } from '../../src/session/operator.ts';
import { briefly, fileWithMoreToAsk, twoSwitches } from './two-switches.ts';
import {
  asksIn,
  judged,
  remove,
  temporaryFolder,
  type VirtualOutcome,
  workplace,
} from './virtual-session.ts';

const session = { ...briefly, machineText: fileWithMoreToAsk };

/** One session or more at the same machine, each ended by the person at the ask that `stops` names, counted from 0. */
async function sessions(
  faults: readonly string[],
  stops: readonly number[],
): Promise<readonly VirtualOutcome[]> {
  const folder = temporaryFolder();
  // A press told only when it is over is told for 150 ms: five reports a second would miss it.
  const rate = faults.some((fault) => fault.startsWith('reports-on-release')) ? 20 : 5;
  const place = workplace({ ...twoSwitches, faults, telling: { ...twoSwitches.telling, rate } });
  const outcomes: VirtualOutcome[] = [];
  try {
    for (const stop of [...stops, undefined]) {
      let asked = 0;
      const stopAt = (event: FaceEvent) => event.kind === 'ask' && asked++ === stop;
      const resume = outcomes.length > 0;
      outcomes.push(await place.session({ folder, session: { ...session, resume }, stopAt }));
    }
    return outcomes;
  } finally {
    place.leave();
    remove(folder);
  }
}

/** What the stream's own notes say depends on how often it was opened. */
const ofInputs = (outcome: VirtualOutcome | undefined): readonly string[] =>
  outcome ? judged(outcome).filter((line) => !line.includes(' stream:')) : [];

/** An input that nothing holds wanders while its switch is pressed: whether one press shows it is chance, in one session as in two. */
const byChance = (faults: readonly string[]): RegExp =>
  faults.includes('floating:x-home') ? /^press x-home: (proved edge|limited edge chatters)$/ : /^$/;

/** A sound machine at every ask; the others at every third, a different one each, and at every one where CI=true. */
const isLeftOut = (ask: number, nth: number): boolean =>
  process.env['CI'] !== 'true' && nth > 0 && (ask + nth) % 3 !== 0;

describe.each(
  [
    [],
    ['normally-open:x-home'],
    ['broken-wire:x-home'],
    ['crossed:x-home,stop'],
    ['sticks:x-home'],
    ['held-at-rest:x-home'],
    ['polarity-reversed:stop'],
    ['floating:x-home'],
    ['halts-at-limit'],
    ['restarts-mid-row:x-home'],
    ['reports-on-release:x-home', 'reports-on-release:stop'],
    ['levels-only'],
  ].map((faults, nth) => ({ faults, nth })),
)('a session with $faults', ({ faults, nth }) => {
  it('comes to the same verdicts, stopped at any ask and gone on with', async () => {
    const [whole] = await sessions(faults, []);
    if (!whole) throw new Error('no session');
    for (const [number, { ask }] of asksIn(whole).entries()) {
      if (isLeftOut(number, nth)) continue;
      const [stopped, resumed] = await sessions(faults, [number]);
      const told = `stopped at ask ${number + 1}, ${ask.check} ${ask.action}`;
      expect(stopped?.exit, told).not.toBe(0);
      expect(stopped?.facts.stopped, told).toBe(true);
      const certain = (outcome: VirtualOutcome | undefined) =>
        ofInputs(outcome).map((line) => line.replace(byChance(faults), 'press x-home: either'));
      expect(certain(resumed), told).toEqual(certain(whole));
      expect(resumed?.exit, told).toBe(whole.exit);
      expect(resumed?.facts.stopped, told).toBe(false);
    }
  }, 120_000);
});

describe('the ask at which a session was stopped', () => {
  const asked = (outcome: VirtualOutcome | undefined) => (outcome ? asksIn(outcome) : []);

  it('comes again with a new number that goes on from the old, and says which it was', async () => {
    const [stopped, resumed] = await sessions([], [4]);
    const last = asked(stopped).at(-1);
    const again = asked(resumed).find((each) => each.again !== undefined);
    expect(again).toMatchObject({ again: last?.id, ask: last?.ask });
    expect(asked(resumed)[0]?.id).toBe((last?.id ?? 0) + 1);
  });

  it('comes again after what is still unplugged was confirmed', async () => {
    const [whole] = await sessions([], []);
    const number = asked(whole).findIndex(({ ask }) => ask.action === 'unplug');
    const [, resumed] = await sessions([], [number + 1]);
    const topics = asked(resumed).map(({ ask }) => ('topic' in ask ? ask.topic : ask.action));
    expect(topics[0]).toBe('still-out');
    expect(topics.indexOf('press')).toBeGreaterThan(0);
  });

  it('may come again and again', async () => {
    const [whole] = await sessions([], []);
    const outcomes = await sessions(
      [],
      Array.from({ length: 12 }, () => 2),
    );
    expect(ofInputs(outcomes.at(-1))).toEqual(ofInputs(whole));
  });

  it('shows verdicts given before as restored, and gives each but once', async () => {
    const [stopped, resumed] = await sessions([], [9]);
    const given = (outcome: VirtualOutcome | undefined, restored: boolean) =>
      (outcome?.events ?? []).flatMap((event) =>
        event.kind === 'verdict' && event.restored === restored
          ? [`${event.verdict.check} ${event.verdict.subject}`]
          : [],
      );
    expect(given(resumed, true).length).toBeGreaterThan(0);
    const fresh = given(resumed, false);
    expect(new Set(fresh).size).toBe(fresh.length);
    expect(given(resumed, true).filter((each) => fresh.includes(each))).toEqual([]);
    expect(given(stopped, true)).toEqual([]);
  });
});
