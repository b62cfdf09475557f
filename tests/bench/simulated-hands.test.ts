import { describe, expect, it } from 'vitest';
import type { Ask } from '../../src/model/ask.ts';
import { seconds } from '../../src/model/units.ts';
import { person } from './person.ts';

const common = { check: 'press', seconds: seconds(20) } as const;
const pressOf = (subject: string, more: object = {}): Ask =>
  ({ ...common, action: 'press', subject, round: 1, rounds: 1, expect: 'answer', deaf: [], ...more }) as Ask;

describe('the simulated hands', () => {
  it('press after a moment, hold for about a second, let go, and say done where nobody asks for more', () => {
    const { ask, told, said, names } = person();
    expect(ask(pressOf('x-far'))).toBe('done');
    const held = told().filter(({ active }) => active[names().indexOf('x-far')] === '1');
    expect(held[0]?.arrived).toBeGreaterThan(400);
    expect(held.length).toBeGreaterThan(75);
    expect(held.length).toBeLessThan(125);
    expect(said[0]?.at).toBeGreaterThan((held.at(-1)?.arrived ?? 0) + 500);
  });

  it('say nothing about a press once the next thing is asked', () => {
    const { hands, wait, said } = person();
    hands.asked(1, pressOf('x-far'));
    wait(2300);
    hands.asked(2, pressOf('y-far'));
    wait(8000);
    expect(said.map(({ id }) => id)).toEqual([2]);
  });

  it('let go of what they hold before they do the next thing', () => {
    const { hands, wait, level } = person();
    hands.asked(1, pressOf('x-far'));
    wait(1300);
    expect(level('x-far')).toBe('H');
    hands.asked(2, { ...common, action: 'confirm', topic: 'stop-area-clear', subject: 'stop' });
    wait(3000);
    expect(level('x-far')).toBe('L');
  });

  it('pull the plug first and say done then, and put it back', () => {
    const { ask, bench, said, told, names } = person();
    const plug = { ...common, subject: 'probe', at: 'switch', conductor: 'signal plug' } as const;
    expect(ask({ ...plug, action: 'unplug' })).toBe('done');
    expect(bench.eyes.isOut('probe', 'switch')).toBe(true);
    const opened = told().find(({ active }) => active[names().indexOf('probe')] === '1');
    expect(opened?.arrived).toBeLessThan(said[0]?.at ?? 0);
    expect(ask({ ...plug, action: 'replug' })).toBe('done');
    expect(bench.eyes.isOut('probe', 'switch')).toBe(false);
  });

  it('pull a wrong plug where they are told to, put that one back, and get it right the next time', () => {
    const { ask, bench } = person([], { pullsInstead: { 'x-home': 'x-far' } });
    const plug = { ...common, subject: 'x-home', at: 'switch', conductor: 'signal plug' } as const;
    const out = () => ['x-home', 'x-far'].filter((subject) => bench.eyes.isOut(subject, 'switch'));
    ask({ ...plug, action: 'unplug' });
    expect(out()).toEqual(['x-far']);
    ask({ ...plug, action: 'replug' });
    expect(out()).toEqual([]);
    ask({ ...plug, action: 'unplug', again: true });
    expect(out()).toEqual(['x-home']);
    ask({ ...plug, action: 'replug' });
    expect(out()).toEqual([]);
  });

  it('leave the stop in while it is tried, and unlatch it when asked', () => {
    const { ask, level } = person();
    expect(ask(pressOf('stop', { check: 'stop' }))).toBe('done');
    expect(level('stop')).toBe('H');
    expect(ask({ ...common, action: 'release', subject: 'stop', watch: ['stop'], why: 'latched' })).toBe(
      'done',
    );
    expect(level('stop')).toBe('L');
    ask(pressOf('stop'));
    expect(level('stop')).toBe('L');
  });

  it('say what they see: something on a switch, power gone or not, a plug still out, what came back by itself', () => {
    const touched = (faults: string[]) =>
      person(faults).ask({ ...common, action: 'look', topic: 'touched', subject: 'x-home' });
    expect(touched([])).toBe('no');
    expect(touched(['held-at-rest:x-home'])).toBe('yes');
    expect(touched(['bent-lever:x-home'])).toBe('no');
    const stop = (faults: string[]) => {
      const { ask } = person(faults);
      ask(pressOf('stop', { check: 'stop' }));
      const power = ask({ ...common, action: 'look', topic: 'power', subject: 'stop' });
      ask({ ...common, action: 'release', subject: 'stop', watch: ['stop'], why: 'latched' });
      return [power, ask({ ...common, action: 'confirm', topic: 'stayed-off', subject: 'stop' })];
    };
    expect(stop([])).toEqual(['knob-free', 'yes']);
    expect(stop(['power-stays-on'])).toEqual(['did-not', 'yes']);
    expect(stop(['restarts-on-unlatch'])).toEqual(['knob-free', 'no']);
    const { ask, bench } = person();
    const out: Ask = { ...common, action: 'confirm', topic: 'still-out', subject: 'probe', at: 'controller' };
    expect(ask(out)).toBe('no');
    bench.unplug('probe', 'controller');
    expect(ask(out)).toBe('yes');
  });

  it('free a lever that sticks when asked to, and from then on unasked while no stream can tell them', () => {
    const { ask, level, bench } = person(['sticks:x-home']);
    ask(pressOf('x-home'));
    expect(level('x-home')).toBe('H');
    ask({ ...common, action: 'release', subject: 'x-home', watch: ['x-home'], why: 'sticks' });
    expect(level('x-home')).toBe('L');
    bench.unplug('x-home', 'switch');
    ask(pressOf('x-home', { expect: 'no-answer' }));
    bench.replug('x-home', 'switch');
    expect(ask(pressOf('y-home'))).toBe('done');
    expect(level('x-home')).toBe('L');
  });

  it('do nothing and say so where they are told to refuse, and keep silent with hands off', () => {
    const { ask, bench } = person([], {
      saysInstead: (ask) => (ask.action === 'unplug' ? 'cannot' : undefined),
    });
    const plug = { ...common, subject: 'probe', at: 'switch', conductor: 'signal plug' } as const;
    expect(ask({ ...plug, action: 'unplug' })).toBe('cannot');
    expect(bench.eyes.isOut('probe', 'switch')).toBe(false);
    expect(ask({ ...common, action: 'hands-off' })).toBeUndefined();
  });

  it('let go of everything when they leave, and say nothing more', () => {
    const { hands, wait, level, said } = person();
    hands.asked(1, pressOf('x-far'));
    wait(1300);
    hands.leave();
    wait(5000);
    expect([level('x-far'), said]).toEqual(['L', []]);
  });

  it('do the same at the same moments for the same seed', () => {
    const moments = (seed: number) => {
      const { ask, lines } = person([], { seed });
      ask(pressOf('x-far'));
      return lines.map(({ text }) => text).join('');
    };
    expect(moments(4)).toBe(moments(4));
    expect(moments(4)).not.toBe(moments(5));
  });
});
