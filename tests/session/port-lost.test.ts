import { describe, expect, it } from 'vitest';
import type { FaceEvent } from '../../src/session/operator.ts';
import { PulledCable } from './pulled-cable.ts';
import { briefly, fileWithMoreToAsk, twoSwitches } from './two-switches.ts';
import {
  asksIn,
  judged,
  remove,
  temporaryFolder,
  type VirtualOutcome,
  workplace,
} from './virtual-session.ts';

interface Pull {
  /** The ask at which it happens, from 0; ms after it was put; ms until the cable is back. */
  readonly ask: number;
  readonly after: number;
  readonly lasts: number;
}

async function session(faults: readonly string[], pulls: readonly Pull[]): Promise<VirtualOutcome> {
  const folder = temporaryFolder();
  const cable = new PulledCable();
  const place = workplace({ ...twoSwitches, faults });
  let asked = 0;
  const watch = (event: FaceEvent): boolean => {
    if (event.kind !== 'ask') return false;
    for (const { ask, after, lasts } of pulls) if (ask === asked) cable.pull(after, lasts);
    asked++;
    return false;
  };
  try {
    return await place.session({
      folder,
      session: { ...briefly, machineText: fileWithMoreToAsk },
      through: cable.through,
      stopAt: watch,
    });
  } finally {
    place.leave();
    remove(folder);
  }
}

const ofInputs = (outcome: VirtualOutcome) => judged(outcome).filter((line) => !line.includes(' stream:'));
const ofStream = (outcome: VirtualOutcome) => judged(outcome).filter((line) => line.includes(' stream:'));

/** A sound machine at every ask; the others at every third, a different one each, and at every one where CI=true. */
const isLeftOut = (ask: number, nth: number): boolean =>
  process.env['CI'] !== 'true' && nth > 0 && (ask + nth) % 3 !== 0;

describe.each(
  [[], ['normally-open:x-home'], ['held-at-rest:x-home', 'halts-at-limit'], ['sticks:x-home']].map(
    (faults, nth) => ({ faults, nth }),
  ),
)('the cable pulled and plugged again, $faults', ({ faults, nth }) => {
  // Before the hand moves, while it is on the switch or the plug, and as it answers; a moment, and long enough to think.
  it.each([
    { after: 50, lasts: 700 },
    { after: 900, lasts: 2500 },
    { after: 1700, lasts: 9000 },
  ])(
    'changes no verdict at any ask, $after ms into it for $lasts ms',
    async (when) => {
      const whole = await session(faults, []);
      for (const [ask, shown] of asksIn(whole).entries()) {
        if (isLeftOut(ask, nth)) continue;
        const outcome = await session(faults, [{ ask, ...when }]);
        expect(ofInputs(outcome), `at ask ${ask + 1}, ${shown.ask.check} ${shown.ask.action}`).toEqual(
          ofInputs(whole),
        );
        expect(outcome.exit).toBe(whole.exit);
      }
    },
    120_000,
  );
});

describe('a cable that was pulled', () => {
  it('is noted beside the verdicts of the check it fell into, and told at once', async () => {
    const outcome = await session([], [{ ask: 3, after: 300, lasts: 3000 }]);
    expect(ofStream(outcome)).toEqual(['press stream: proved commanded stream-gaps']);
    const topics = outcome.events.flatMap((event) => (event.kind === 'notice' ? [event.topic] : []));
    expect(topics.slice(topics.indexOf('stream-lost')).filter((topic) => topic !== 'written')).toEqual([
      'stream-lost',
      'awaiting-stream',
      'stream-back',
    ]);
    expect(outcome.facts.stream.gaps).toBe(1);
  });

  it('puts the ask again, and the one that broke off counts for nothing', async () => {
    const outcome = await session([], [{ ask: 3, after: 300, lasts: 3000 }]);
    const [before, after] = asksIn(outcome).slice(3, 5);
    expect(outcome.events).toContainEqual({ kind: 'ended', id: before?.id, by: 'gap' });
    expect(after?.ask).toEqual(before?.ask);
  });

  it('may be pulled in every ask of a row in turn', async () => {
    const whole = await session([], []);
    const unplug = asksIn(whole).findIndex(({ ask }) => ask.action === 'unplug');
    const pulls = [0, 2].map((i) => ({ ask: unplug + i, after: 900, lasts: 1500 }));
    expect(ofInputs(await session([], pulls))).toEqual(ofInputs(whole));
  });

  it('leaves a row that never comes whole without a verdict on it, and with its plug asked back', async () => {
    const whole = await session([], []);
    const unplug = asksIn(whole).findIndex(({ ask }) => ask.action === 'unplug');
    // Pulled at every unplug of the first switch: three rows, each broken off and put back.
    const pulls = [0, 2, 4].map((i) => ({ ask: unplug + i, after: 900, lasts: 1500 }));
    const outcome = await session([], pulls);
    expect(ofInputs(outcome).find((line) => line.startsWith('open-wire x-home'))).toMatch(/inconclusive/);
    expect(outcome.facts.register).toEqual([]);
    expect(outcome.exit).not.toBe(0);
  });
});
