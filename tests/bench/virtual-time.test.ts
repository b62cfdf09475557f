import { describe, expect, it } from 'vitest';
import { virtualTime } from '../../src/bench/virtual-time.ts';
import { ms } from '../../src/model/units.ts';

const never = () => false;

describe('virtual time', () => {
  it('calls what is due in order of time, and in the order asked for within one moment', () => {
    const time = virtualTime();
    const called: string[] = [];
    const call = (delay: number, name: string) =>
      time.after(ms(delay), () => called.push(`${name}@${time.now()}`));
    call(30, 'c');
    call(10, 'a');
    call(10, 'b');
    call(0, 'first');
    time.run(never);
    expect(called).toEqual(['first@0', 'a@10', 'b@10', 'c@30']);
  });

  it('keeps any number of random moments in order', () => {
    const time = virtualTime();
    const seen: number[] = [];
    for (let i = 0; i < 2000; i++) time.after(ms((i * 7919) % 997), () => seen.push(time.now()));
    time.run(never);
    expect(seen).toHaveLength(2000);
    expect(seen).toEqual([...seen].sort((a, b) => a - b));
  });

  it('takes back what is no longer wanted', () => {
    const time = virtualTime();
    const called: number[] = [];
    const takeBack = time.after(ms(5), () => called.push(5));
    time.after(ms(3), takeBack);
    time.after(ms(9), () => called.push(9));
    time.run(never);
    expect(called).toEqual([9]);
  });

  it('stops as soon as what is waited for has come, and says whether it came', () => {
    const time = virtualTime(ms(1000));
    let ticks = 0;
    const tick = () => {
      ticks++;
      time.after(ms(10), tick);
    };
    tick();
    expect(time.run(() => ticks === 4)).toBe(true);
    expect(time.now()).toBe(1030);
    expect(virtualTime().run(never)).toBe(false);
  });

  it('never goes back, even where a delay is negative', () => {
    const time = virtualTime(ms(50));
    time.after(ms(-20), () => expect(time.now()).toBe(50));
    expect(time.run(never)).toBe(false);
  });

  it('lets a hundred thousand moments pass in far less than a second', () => {
    const time = virtualTime();
    let left = 100_000;
    const tick = () => {
      if (--left > 0) time.after(ms(10), tick);
    };
    for (let i = 0; i < 50; i++) time.after(ms(i), tick);
    const from = performance.now();
    time.run(never);
    expect(left).toBeLessThanOrEqual(0);
    expect(performance.now() - from).toBeLessThan(1000);
  });
});
