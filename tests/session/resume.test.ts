import { appendFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import type { Ask } from '../../src/model/ask.ts';
import type { CheckName } from '../../src/model/verdict.ts';
import type { FaceEvent } from '../../src/session/operator.ts';
import { found, remove, temporaryFolder, virtualSession } from './virtual-session.ts';

const folders: string[] = [];
const folder = (): string => {
  const path = temporaryFolder();
  folders.push(path);
  return path;
};
afterEach(() => {
  for (const path of folders.splice(0)) remove(path);
});

const session = { only: ['x-home', 'x-far'], presses: 1, restSeconds: 2 };

describe('a resumed session', () => {
  it('has motor power and the prop confirmed again before a hand goes to a switch', async () => {
    const path = folder();
    const first = await virtualSession({
      folder: path,
      session,
      stopAt: (event) =>
        event.kind === 'ask' && event.ask.action === 'press' && event.ask.subject === 'x-far',
    });
    expect(first.exit).toBe(2);
    const again = await virtualSession({ folder: path, session: { ...session, resume: true } });
    const asks = again.events.filter((event) => event.kind === 'ask');
    expect(asks.slice(0, 3).map(({ ask, again }) => [ask.check, ask.action, again !== undefined])).toEqual([
      ['resume', 'power', false],
      ['resume', 'confirm', false],
      ['press', 'press', true],
    ]);
    const whole = await virtualSession({ folder: folder(), session });
    expect(found(again)).toEqual(found(whole));
  });

  it.each([
    ['seek', ['power to on', 'way-free Z']],
    ['home', ['power to on', 'way-free Z']],
    ['move', ['power to on', 'way-free Z']],
  ] as const)(
    'has props out, power on and a free way confirmed again before a %s',
    async (action, wanted) => {
      const path = folder();
      const checks: readonly CheckName[] = ['rest', 'press', 'open-wire', 'stop', 'seek', 'homing'];
      const moving = { checks, only: ['z-home', 'stop'], presses: 1, restSeconds: 2 };
      const isIt = (ask: Ask) => ask.action === action && ask.axis === 'Z';
      const stopAt = (event: FaceEvent) => event.kind === 'ask' && isIt(event.ask);
      await virtualSession({ folder: path, session: moving, stopAt });
      const again = await virtualSession({ folder: path, session: { ...moving, resume: true } });
      const asks = again.events.flatMap((event) => (event.kind === 'ask' ? [event] : []));
      expect(
        asks
          .slice(0, 2)
          .map(({ ask }) =>
            ask.action === 'power'
              ? `power to ${ask.to}`
              : ask.action === 'confirm' && 'axis' in ask
                ? `${ask.topic} ${ask.axis}`
                : ask.action,
          ),
      ).toEqual(wanted);
      const [, , next] = asks;
      expect(next && isIt(next.ask) && next.again !== undefined).toBe(true);
      expect(found(again)).toEqual(found(await virtualSession({ folder: folder(), session: moving })));
    },
  );

  it('is not gone on with where its copy of the machine file was changed', async () => {
    const path = folder();
    await virtualSession({ folder: path, session, stopAt: (event) => event.kind === 'ask' });
    appendFileSync(join(path, 'machine.yaml'), '# left and right exchanged\n');
    await expect(
      virtualSession({ folder: path, session: { ...session, resume: true } }),
    ).rejects.toMatchObject({ code: 'session-differs', message: expect.stringContaining('machine file') });
  });

  it('goes to no switch where motor power is not off', async () => {
    const path = folder();
    await virtualSession({
      folder: path,
      session,
      stopAt: (event) => event.kind === 'ask' && event.ask.action === 'press',
    });
    const again = await virtualSession({
      folder: path,
      session: { ...session, resume: true },
      hands: { saysInstead: (ask) => (ask.action === 'power' ? 'cannot' : undefined) },
    });
    expect(again.exit).toBe(2);
    expect(again.events.some((event) => event.kind === 'ask' && event.ask.action === 'press')).toBe(false);
  });
});
