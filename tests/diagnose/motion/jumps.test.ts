import { describe, expect, it } from 'vitest';
import { jumpsIn } from '../../../src/diagnose/motion/jumps.ts';
import { axisTrack } from '../../../src/diagnose/motion/track.ts';
import { mm } from '../../../src/model/units.ts';
import { report, seenMotion, windowOf } from './reports.ts';

const jumps = (plan: Parameters<typeof seenMotion>[0]['plan'], more = {}) =>
  seenMotion({ plan, acceleration: 300, ...more }).motion.jumps.map(({ by }) => Number(by.toFixed(3)));

describe('a position that was set and not travelled', () => {
  it('is found at rest, however small a machine zero differs from the last one', () => {
    expect(jumps([{ wait: 300 }, { set: 0.5 }, { wait: 300 }])).toEqual([0.5]);
    expect(jumps([{ wait: 300 }, { by: 20, speed: 20 }, { wait: 300 }, { set: 0 }, { wait: 300 }])).toEqual([
      -20,
    ]);
  });

  it('is found right after slow motion, without rest between', () => {
    // Up to one report's way of 0.02 mm was still ahead when it was set.
    expect(jumps([{ wait: 300 }, { by: 2, speed: 1 }, { set: 0 }, { wait: 300 }])).toEqual([
      expect.closeTo(-2, 1),
    ]);
  });

  it('is not seen in motion as fast and as fierce as the axis can go', () => {
    for (let seed = 1; seed <= 30; seed++) {
      const plan = [{ wait: 300 }, { by: 60, speed: 80 }, { by: -60, speed: 80 }, { wait: 300 }];
      expect(
        jumps(plan, { acceleration: 1500, jitter: 0.4, loss: 0.2, dither: 1, seed, period: 20 }),
      ).toEqual([]);
      expect(jumps(plan, { acceleration: 1500, jitter: 0.3, seed, period: 100 })).toEqual([]);
    }
  });

  it('cannot be told from motion where reports are further apart than the change takes', () => {
    expect(jumps([{ wait: 900 }, { set: 0.5 }, { wait: 900 }], { period: 200 })).toEqual([]);
  });

  it('is what a new segment begins with', () => {
    const samples = axisTrack(windowOf([report(0, 5), report(10, 5, { segment: 2 })]), 'X');
    expect(jumpsIn(samples, { step: mm(0.01) })).toEqual([{ before: 0, by: 0 }]);
  });

  it('is known by three times the declared rapid', () => {
    const samples = axisTrack(windowOf([0, 10, 20, 30].map((at, i) => report(at, i < 2 ? 0 : 2.5))), 'X');
    expect(jumpsIn(samples, { step: mm(0.01), rapid: 6000 })).toEqual([]);
    expect(jumpsIn(samples, { step: mm(0.01), rapid: 4800 })).toHaveLength(1);
  });
});
