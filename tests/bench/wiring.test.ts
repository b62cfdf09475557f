import { describe, expect, it } from 'vitest';
import { stand } from './stand.ts';

describe('the sound machine', () => {
  it('reads every input low and not active at rest', () => {
    const { wait, last, names } = stand();
    wait(200);
    expect(names()).toEqual(['x-home', 'x-far', 'y-home', 'y-far', 'z-home', 'probe', 'stop', 'doors']);
    expect(last()).toMatchObject({ levels: 'LLLLLLLL', active: '00000000', activity: 'still' });
  });

  it('answers a press on the input of the switch and on no other, and only while it is pressed', () => {
    const { bench, wait, last } = stand();
    for (const [terminal, subject] of ['x-home', 'x-far', 'y-home', 'y-far', 'z-home', 'probe'].entries()) {
      const expected = [...'LLLLLLLL'].map((level, i) => (i === terminal ? 'H' : level)).join('');
      bench.press(subject);
      wait(100);
      expect(last().levels).toBe(expected);
      bench.release(subject);
      wait(100);
      expect(last().levels).toBe('LLLLLLLL');
    }
  });

  it('keeps a latching stop in until it is let out, and takes the drives’ power until someone gives it back', () => {
    const { bench, wait, active } = stand();
    bench.press('stop');
    wait(30_000);
    expect(active('stop')).toBe('1');
    expect(bench.eyes.drivesHavePower()).toBe(false);
    bench.power('motors', 'on');
    expect(bench.eyes.drivesHavePower()).toBe(false);
    bench.release('stop');
    wait(100);
    expect(active('stop')).toBe('0');
    expect(bench.eyes.drivesHavePower()).toBe(false);
    expect(bench.eyes.cameBackByItself()).toBe(false);
    bench.power('motors', 'on');
    expect(bench.eyes.drivesHavePower()).toBe(true);
  });

  it('opens a chain of doors with either door', () => {
    const { bench, wait, active } = stand();
    for (const door of ['doors/flap', 'doors/hatch']) {
      bench.press(door);
      wait(50);
      expect(active('doors')).toBe('1');
      bench.release(door);
      wait(50);
      expect(active('doors')).toBe('0');
    }
  });
});

describe('a pulled plug', () => {
  it('at the switch opens its own input only, and its switch no longer answers', () => {
    const { bench, wait, last } = stand();
    bench.unplug('x-far', 'switch');
    wait(50);
    expect(last().levels).toBe('LHLLLLLL');
    bench.press('x-far');
    wait(50);
    expect(last().levels).toBe('LHLLLLLL');
    bench.release('x-far');
    bench.replug('x-far', 'switch');
    wait(50);
    expect(last().levels).toBe('LLLLLLLL');
  });

  it('at the controller drops every input of its connector', () => {
    const { bench, wait, last } = stand();
    bench.unplug('y-home', 'controller');
    wait(50);
    expect(last().levels).toBe('HHHLLLLL');
    expect(bench.eyes.isOut('x-home', 'controller')).toBe(true);
    expect(bench.eyes.isOut('x-home', 'switch')).toBe(false);
    bench.replug('x-home', 'controller');
    wait(50);
    expect(last().levels).toBe('LLLLLLLL');
  });
});

describe('a jumper', () => {
  it('at the switch makes a pressed or unplugged switch look closed', () => {
    const { bench, wait, level } = stand();
    bench.setJumper('x-home', 'switch', true);
    bench.press('x-home');
    bench.unplug('x-home', 'switch');
    wait(50);
    expect(level('x-home')).toBe('L');
    bench.setJumper('x-home', 'switch', false);
    wait(50);
    expect(level('x-home')).toBe('H');
  });

  it('at the switch changes nothing where the wire to it is broken, at the controller it does', () => {
    const { bench, wait, level } = stand({ faults: ['broken-wire:x-home'] });
    bench.setJumper('x-home', 'switch', true);
    wait(50);
    expect(level('x-home')).toBe('H');
    bench.setJumper('x-home', 'controller', true);
    wait(50);
    expect(level('x-home')).toBe('L');
  });
});

describe('a hand sent to what the machine has not', () => {
  it('is refused by what there is', () => {
    const { bench } = stand();
    expect(() => bench.press('w-home')).toThrow(expect.objectContaining({ allowed: bench.eyes.switches }));
    expect(() => bench.press('doors')).toThrow(expect.objectContaining({ message: 'no switch doors' }));
    expect(() => bench.seek('W')).toThrow(expect.objectContaining({ allowed: ['X', 'Y', 'Z'] }));
  });
});
