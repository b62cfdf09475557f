import { describe, expect, it, vi } from 'vitest';
import { HandsFace } from '../../src/console/hands-face.ts';
import { type BenchHands, HandsPanel } from '../../src/console/hands-panel.ts';
import { blockGlyphs } from '../../src/console/painting/glyphs.ts';
import { textOf } from '../../src/console/painting/row.ts';
import type { Answer } from '../../src/model/ask.ts';
import type { Face, Reply } from '../../src/session/operator.ts';
import { press, shown } from './events.ts';

function bench() {
  const done: string[] = [];
  const held = new Set<string>();
  const out = new Set<string>();
  let motors = true;
  const hands: BenchHands = {
    switches: ['x-home', 'y-home'],
    press: (subject) => {
      held.add(subject);
      done.push(`press ${subject}`);
    },
    release: (subject) => {
      held.delete(subject);
      done.push(`release ${subject}`);
    },
    setPlug: (subject, at, isOut) => {
      if (isOut) out.add(`${subject} ${at}`);
      else out.delete(`${subject} ${at}`);
      done.push(`${isOut ? 'unplug' : 'replug'} ${subject} ${at}`);
    },
    setMotorPower: (on) => {
      motors = on;
      done.push(`motors ${on ? 'on' : 'off'}`);
    },
    clear: () => done.push('clear'),
    inHand: (subject) => held.has(subject),
    isOut: (subject, at) => out.has(`${subject} ${at}`),
    hasMotorPower: () => motors,
  };
  const panel = new HandsPanel(hands);
  const keys = (typed: string): boolean[] => [...typed].map((key) => panel.key(key));
  const pageOf = (width: number) =>
    panel.rows({ width, height: 24, glyphs: blockGlyphs, now: 0 }).map(textOf).join('\n');
  return { done, keys, pageOf, key: (name: string) => panel.key(name), page: () => pageOf(80) };
}

describe('the keyboard as hands', () => {
  it('lets a tapped switch go by itself after a second', () => {
    vi.useFakeTimers();
    const { done, keys, page } = bench();
    keys('1');
    expect(page()).toContain('1 x-home (PRESSED)');
    vi.advanceTimersByTime(1000);
    expect(done).toEqual(['press x-home', 'release x-home']);
    vi.useRealTimers();
  });

  it('holds one until the same keys are typed again', () => {
    const { done, keys } = bench();
    keys('h2h2');
    expect(done).toEqual(['press y-home', 'release y-home']);
  });

  it('pulls and plugs at the switch and at the controller, and shows what is out', () => {
    const { done, keys, page } = bench();
    keys('o1O2');
    expect(page()).toMatch(/1 x-home \(OUT\)[\s\S]*2 y-home \(OUT at controller\)/);
    keys('o1O2');
    expect(done).toEqual([
      'unplug x-home switch',
      'unplug y-home controller',
      'replug x-home switch',
      'replug y-home controller',
    ]);
  });

  it('forgets a choice when Escape takes it back, and the next digit taps', () => {
    vi.useFakeTimers();
    const { done, key, keys, page } = bench();
    for (const choice of ['h', 'o', 'O']) {
      keys(choice);
      expect(page()).toContain('Esc none');
      expect(key('escape')).toBe(true);
      expect(page()).toContain('h hold');
    }
    expect(key('escape')).toBe(false);
    keys('1');
    vi.advanceTimersByTime(1000);
    expect(done).toEqual(['press x-home', 'release x-home']);
    vi.useRealTimers();
  });

  it('shows every key of the hands in a narrow window too', () => {
    const { pageOf } = bench();
    for (const key of ['h hold', 'o unplug', 'O at controller', 'v motors ON', 'w clear halt', '2 y-home'])
      for (const width of [60, 40]) expect(pageOf(width)).toContain(key);
  });

  it('forgets a choice that is taken back, and takes no key that is an answer', () => {
    const { done, keys } = bench();
    expect(keys('oo')).toEqual([true, true]);
    expect(keys('dcusqynklmp?39')).not.toContain(true);
    expect(keys('vvw')).toEqual([true, true, true]);
    expect(done).toEqual(['motors off', 'motors on', 'clear']);
  });
});

describe('simulated hands in front of a face', () => {
  function meet() {
    const replies: Reply[] = [];
    const asked: number[] = [];
    let say: (reply: Reply) => void = () => {};
    let answer: (id: number, answer: Answer) => void = () => {};
    const face: Face = {
      start: (take) => {
        say = take;
      },
      show: () => {},
      close: () => {},
    };
    const both = new HandsFace(face, (given) => {
      answer = given;
      return { asked: (id) => asked.push(id), leave: () => asked.push(-1) };
    });
    both.start((reply) => replies.push(reply));
    return {
      both,
      replies,
      asked,
      say: (reply: Reply) => say(reply),
      answer: (id: number) => answer(id, 'done'),
    };
  }

  it('leaves "done" to the hands, and everything else to whoever says it first', () => {
    const { both, replies, asked, say, answer } = meet();
    both.show(shown(1, press('x-home')));
    say({ kind: 'answer', id: 1, answer: 'done' });
    expect(replies).toEqual([]);
    say({ kind: 'answer', id: 1, answer: 'skip' });
    say({ kind: 'wrong', found: 'x' });
    answer(1);
    expect(replies.map((reply) => (reply.kind === 'answer' ? reply.answer : reply.kind))).toEqual([
      'skip',
      'wrong',
      'done',
    ]);
    both.close();
    expect(asked).toEqual([1, -1]);
  });

  it('lets a person say that she has taken her hands off', () => {
    const { both, replies, say } = meet();
    both.show(shown(2, { action: 'hands-off' }));
    say({ kind: 'answer', id: 2, answer: 'done' });
    expect(replies).toHaveLength(1);
  });
});
