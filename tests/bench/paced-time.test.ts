import { describe, expect, it } from 'vitest';
import { Bench } from '../../src/bench/bench.ts';
import { pacedTime } from '../../src/bench/paced-time.ts';
import { scenario } from '../../src/bench/scenario.ts';
import { virtualTime } from '../../src/bench/virtual-time.ts';
import type { Timekeeper } from '../../src/model/source.ts';
import { type Millis, ms } from '../../src/model/units.ts';

/** A computer whose timers come late: `late` says by how many ms each time. */
function lateComputer(late: () => number): Timekeeper & { run(until: Millis): void } {
  const time = virtualTime();
  return {
    now: time.now,
    after: (delay, then) => time.after(ms(delay + late()), then),
    run: (until) => time.runTo(until),
  };
}

describe('time of a simulated world on a computer that is late', () => {
  it('has everything happen in its order and at its own moment', () => {
    const computer = lateComputer(() => 40);
    const time = pacedTime(computer);
    const happened: (readonly [string, number])[] = [];
    time.after(ms(20), () => happened.push(['second', time.now()]));
    time.after(ms(10), () => {
      happened.push(['first', time.now()]);
      time.after(ms(3), () => happened.push(['what followed from it', time.now()]));
    });
    computer.run(ms(100));
    expect(happened).toEqual([
      ['first', 10],
      ['what followed from it', 13],
      ['second', 20],
    ]);
  });

  it('lets nothing happen before its moment, and nothing that was taken back', () => {
    const computer = lateComputer(() => 0);
    const time = pacedTime(computer);
    const happened: string[] = [];
    const takeBack = time.after(ms(5), () => happened.push('taken back'));
    time.after(ms(30), () => happened.push('later'));
    takeBack();
    computer.run(ms(29));
    expect(happened).toEqual([]);
    computer.run(ms(31));
    expect(happened).toEqual(['later']);
  });

  it('makes up for a second at most: a computer that slept took the machine with it', () => {
    const computer = lateComputer(() => 3_600_000);
    const time = pacedTime(computer);
    let ticks = 0;
    const tick = () => {
      ticks++;
      time.after(ms(10), tick);
    };
    tick();
    computer.run(ms(3_600_020));
    expect(ticks).toBeGreaterThan(90);
    expect(ticks).toBeLessThan(110);
  });
});

/** Where X comes to stand, and at which count, after a homing that begins 40 mm away. */
function homed(time: Timekeeper, run: (until: Millis) => void): string {
  const truth = {
    ...scenario,
    axes: scenario.axes.map((axis) => (axis.letter === 'X' ? { ...axis, stands: 40 } : axis)),
  };
  const bench = new Bench(time, { truth });
  const heard: string[] = [];
  const leave = bench.attach((bytes) => heard.push(Buffer.from(bytes).toString('latin1')));
  bench.home('X');
  run(ms(12_000));
  leave();
  bench.shutDown();
  // Sums, sequence and clock apart: what the reports say of inputs and positions.
  return heard.map((line) => line.split(',').slice(3).join().replace(/\*.*/s, '')).join('\n');
}

describe('the simulated machine on a computer that is late', () => {
  it('homes as it does on one that is not: no timer that came late drives it past its switch', () => {
    const punctual = virtualTime();
    const expected = homed(punctual, punctual.runTo);
    let nth = 0;
    const computer = lateComputer(() => [0, 25, 3, 60, 1, 110][nth++ % 6] ?? 0);
    const late = homed(pacedTime(computer), computer.run);
    expect(expected).toMatch(/homing,H/);
    expect(late.startsWith(expected.slice(0, late.length - 400))).toBe(true);
    expect(late.length).toBeGreaterThan(expected.length * 0.95);
  });
});
