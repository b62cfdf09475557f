import { describe, expect, it } from 'vitest';
import type { Answer, Ask } from '../../src/model/ask.ts';
import { subjectOf } from '../../src/model/ask.ts';
import { briefly, fileWithMoreToAsk, twoSwitches } from './two-switches.ts';
import {
  asksIn,
  judged,
  remove,
  temporaryFolder,
  type VirtualOutcome,
  virtualSession,
} from './virtual-session.ts';

/** Halts that must be cleared, an axis that stands on its switch: with the longer file every kind of ask comes. */
const machines = [
  { name: 'one normally open switch', faults: ['normally-open:x-home'], text: undefined },
  { name: 'much to ask', faults: ['held-at-rest:x-home', 'halts-at-limit'], text: fileWithMoreToAsk },
] as const;

async function run(
  { faults, text }: (typeof machines)[number],
  saysInstead: (ask: Ask) => Answer | undefined = () => undefined,
): Promise<VirtualOutcome> {
  const folder = temporaryFolder();
  try {
    const session = { ...briefly, ...(text !== undefined && { machineText: text }) };
    return await virtualSession({
      folder,
      bench: { ...twoSwitches, faults },
      session,
      hands: { saysInstead },
    });
  } finally {
    remove(folder);
  }
}

/** Says it once, at the ask of this number. */
const onceAt = (number: number, answer: Answer) => {
  let asked = 0;
  return () => (asked++ === number ? answer : undefined);
};

/** The verdicts that have lost their ground where this ask was not done, reasoned from what each check rests on. */
function groundless(ask: Ask, answer: Answer): readonly string[] {
  const subject = subjectOf(ask);
  const own = `${ask.check} ${subject}`;
  switch (ask.action) {
    case 'hands-off':
      return ['rest x-home', 'rest stop'];
    case 'power':
    case 'confirm':
    case 'look':
    case 'press':
      return subject === undefined ? ['x-home', 'stop'].map((each) => `${ask.check} ${each}`) : [own];
    case 'unplug':
      // Where the switch end is out of reach, the controller's end is asked for instead.
      return answer === 'cannot' ? [] : [own];
    case 'release':
      return ask.check === 'stop' ? [own] : [];
    default:
      // A plug refused is asked back before the check ends; a halt may be cleared unasked.
      return [];
  }
}

const refusals = ['skip', 'not-sure', 'cannot'] as const satisfies readonly Answer[];
const provedIn = (outcome: VirtualOutcome, keys: readonly string[]) =>
  judged(outcome).filter((line) => keys.some((key) => line.startsWith(`${key}: proved`)));

describe.each(machines)('any answer to any ask, $name', (machine) => {
  it('asks for what the others do not', async () => {
    const kinds = new Set(asksIn(await run(machine)).map(({ ask }) => ask.action));
    expect([...kinds].sort()).toEqual(
      machine.text === undefined
        ? ['confirm', 'hands-off', 'look', 'power', 'press', 'release', 'replug', 'unplug']
        : ['clear', 'confirm', 'hands-off', 'look', 'power', 'press', 'release', 'replug', 'unplug'],
    );
  });

  it.each(refusals)(
    'comes to an end after "%s" at any one of them, and proves nothing on it',
    async (answer) => {
      const asks = asksIn(await run(machine));
      for (const [number, { ask }] of asks.entries()) {
        const outcome = await run(machine, onceAt(number, answer));
        const told = `${answer} to ask ${number + 1}, ${ask.check} ${ask.action} ${subjectOf(ask) ?? ''}`;
        expect(provedIn(outcome, groundless(ask, answer)), told).toEqual([]);
        expect(outcome.events.at(-1), told).toMatchObject({ kind: 'finished', exit: outcome.exit });
        if (groundless(ask, answer).length > 0) expect(outcome.exit, told).not.toBe(0);
      }
    },
    120_000,
  );

  it.each(refusals)(
    'comes to an end where everything is answered "%s", with nothing proved',
    async (answer) => {
      const outcome = await run(machine, () => answer);
      expect(judged(outcome).filter((line) => line.includes(': proved'))).toEqual([]);
      expect(outcome.exit).not.toBe(0);
    },
  );

  it('comes to an end where no confirmation is given', async () => {
    const asks = asksIn(await run(machine));
    for (const [number, { ask }] of asks.entries()) {
      if (ask.action !== 'confirm') continue;
      const outcome = await run(machine, onceAt(number, 'no'));
      expect(provedIn(outcome, groundless(ask, 'no')), `no to ask ${number + 1}`).toEqual([]);
    }
  }, 120_000);
});
