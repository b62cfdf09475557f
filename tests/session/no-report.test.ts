import { afterAll, describe, expect, it } from 'vitest';
import type { Source } from '../../src/model/source.ts';
import { ms } from '../../src/model/units.ts';
import { Silence } from '../../src/session/silence.ts';
import { remove, temporaryFolder, virtualSession } from './virtual-session.ts';

const folders: string[] = [];
afterAll(() => folders.forEach(remove));

/** A port on which nothing of this word comes through. */
const without =
  (word: string) =>
  (port: Source): Source => ({
    ...port,
    open: (listener) =>
      port.open((event) => {
        const isIt = event.kind === 'bytes' && Buffer.from(event.bytes).toString().includes(word);
        if (!isIt) listener(event);
      }),
  });

describe('a stream without a report that can be read', () => {
  it('is told of, and is not waited for without end: what was asked for comes out as not tested', async () => {
    const folder = temporaryFolder();
    folders.push(folder);
    const { events, exit, facts } = await virtualSession({
      folder,
      through: without('PTWRD'),
      session: { checks: ['rest'], restSeconds: 2, learnCommand: 'tellwire learn --port bench' },
    });
    const topics = events.flatMap((event) => (event.kind === 'notice' ? [event.topic] : []));
    expect(topics).toContain('nothing-understood');
    const text = events.flatMap((event) => (event.kind === 'notice' ? [event] : [])).at(-1)?.text ?? '';
    expect(text).toMatch(/As heard: "\$PTWRS,\d+,/);
    expect(text).toContain('`tellwire learn --port bench`');
    expect(events.some(({ kind }) => kind === 'ask')).toBe(false);
    expect(facts.verdicts.every(({ status }) => status === 'not-tested')).toBe(true);
    expect(exit).toBe(2);
  });

  it('is told apart from silence, and each is told once until it changes', () => {
    const silence = new Silence(ms(0));
    expect(silence.news(ms(4000))).toBeUndefined();
    expect([silence.news(ms(5500)), silence.news(ms(6000))]).toEqual(['nothing-heard', undefined]);
    silence.heard(ms(10_500), false, 'a7 b9');
    silence.heard(ms(10_600), false, '');
    expect(silence.example).toBe('a7 b9');
    expect([silence.news(ms(11_000)), silence.news(ms(12_000))]).toEqual(['nothing-understood', undefined]);
    expect(silence.news(ms(16_000))).toBe('nothing-heard');
    expect([silence.isOver(ms(60_000)), silence.isOver(ms(60_001))]).toEqual([false, true]);
  });

  it('ends nothing once a report came', () => {
    const silence = new Silence(ms(0));
    silence.heard(ms(59_000), true);
    expect(silence.isOver(ms(3_600_000))).toBe(false);
  });
});
