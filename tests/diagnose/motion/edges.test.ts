import { describe, expect, it } from 'vitest';
import { inputEdges } from '../../../src/diagnose/motion/edges.ts';
import { motionOf } from '../../../src/diagnose/motion/motion.ts';
import type { Reading } from '../../../src/model/reading.ts';
import { mm } from '../../../src/model/units.ts';
import { edge, report, seenMotion, windowOf } from './reports.ts';

const edgesOf = (readings: readonly Reading[], rest?: Parameters<typeof inputEdges>[3]) => {
  const window = windowOf(readings);
  return inputEdges(window, 'home', motionOf(window, 'X', { step: mm(0.01) }), rest);
};
/** 10 mm/s to the left, a report every 20 ms, tripping at −0.9. */
const run = Array.from({ length: 10 }, (_, i) => report(i * 20, -i * 0.2, { home: i >= 5 }));

describe('an input that changes while an axis moves', () => {
  it('did so between the last report before and the first one after, in time and in place', () => {
    expect(edgesOf(run)).toMatchObject([
      { to: 'operated', at: { low: 80, high: 100 }, where: { low: -1, high: expect.closeTo(-0.8, 9) } },
    ]);
  });

  it('is a wider doubt where reports were lost', () => {
    expect(edgesOf(run.filter((_, i) => i !== 5 && i !== 4))).toMatchObject([{ at: { low: 60, high: 120 } }]);
  });

  it('is a point in time where the controller stamped it, and a narrow place', () => {
    const stamped = [...run.slice(0, 5), edge(90, 'H'), ...run.slice(5)];
    const [found] = edgesOf(stamped);
    expect(found?.at).toEqual({ low: 90, high: 90 });
    expect(found?.where?.low).toBeGreaterThan(-0.95);
    expect(found?.where?.high).toBeLessThan(-0.85);
    expect(found?.where?.low).toBeLessThanOrEqual(-0.9);
    expect(found?.where?.high).toBeGreaterThanOrEqual(-0.9);
  });

  it('begins with the first of its stamps: bounce makes more of them', () => {
    const bouncing = [...run.slice(0, 5), edge(84, 'H'), edge(85, 'L'), edge(88, 'H'), ...run.slice(5)];
    expect(edgesOf(bouncing)).toMatchObject([{ at: { low: 84, high: 84 } }]);
  });

  it('is no edge across a gap: what happened in it was not seen', () => {
    const gap = { kind: 'gap', arrived: report(90, 0).arrived, segment: 2, why: 'lost-port' } as const;
    const after = run.slice(5).map((each) => ({ ...each, segment: 2 }));
    expect(edgesOf([...run.slice(0, 5), gap, ...after])).toEqual([]);
  });

  it('has no place where the frame was set anew just then', () => {
    const set = [0, 20, 40, 60, 80, 100].map((at, i) => report(at, i < 3 ? 5 : 400, { home: i >= 3 }));
    expect(edgesOf(set)).toMatchObject([{ to: 'operated', where: undefined }]);
  });

  it('is told from its level at rest where the stream carries levels alone', () => {
    const levels = run.map((each, i) => ({
      ...each,
      active: ['?' as const],
      levels: [i >= 5 ? ('H' as const) : ('L' as const)],
    }));
    expect(edgesOf(levels)).toEqual([]);
    expect(edgesOf(levels, { level: 'L', active: '?' })).toMatchObject([{ to: 'operated' }]);
  });

  it('holds the true place of the switch, whatever the reports do, turns between two reports included', () => {
    let seen = 0;
    for (let seed = 1; seed <= 60; seed++) {
      const period = [10, 20, 50, 100][seed % 4] ?? 10;
      const { motion, window } = seenMotion({
        plan: [
          { wait: 300 },
          { way: -1, speed: 15, until: 'home', most: 40 },
          { by: 2, speed: 15 },
          { wait: 300 },
        ],
        switches: { home: { actuates: -20, frees: -19.6, outwards: -1 } },
        acceleration: 300,
        period,
        loss: 0.1,
        seed,
      });
      const [trip, clear] = inputEdges(window, 'home', motion, undefined);
      // Between two slow reports a trip may come and go.
      if (!trip) continue;
      seen++;
      // Positions are rounded to half a step of 0.0125 mm; the machine moves in ticks of 0.0075 mm.
      expect(trip?.where?.low).toBeLessThanOrEqual(-20 + 0.014);
      expect(trip?.where?.high).toBeGreaterThanOrEqual(-20 - 0.014);
      expect(clear?.where?.low).toBeLessThanOrEqual(-19.6 + 0.014);
      expect(clear?.where?.high).toBeGreaterThanOrEqual(-19.6 - 0.014);
    }
    expect(seen).toBeGreaterThan(55);
  });
});
