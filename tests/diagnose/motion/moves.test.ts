import { describe, expect, it } from 'vitest';
import { accelerationOf } from '../../../src/diagnose/motion/ramp.ts';

describe('acceleration from a move that was only seen in reports', () => {
  const around = (value: number, by: number) => ({ low: value - by, high: value + by });

  it('is bounded by how well distance, time and speed are known', () => {
    // 100 mm at 50 mm/s with 100 mm/s2: 2.5 s.
    const found = accelerationOf(around(100, 0.01), around(2.5, 0.02), around(50, 0.1));
    expect(found?.low).toBeLessThan(100);
    expect(found?.high).toBeGreaterThan(100);
    expect(found?.high).toBeLessThan(110);
  });

  it('has no upper bound where the ramps fall between two reports', () => {
    expect(accelerationOf(around(100, 0.01), around(2.01, 0.1), around(50, 0.1))?.high).toBe(Infinity);
  });

  it('does not follow from numbers that contradict each other', () => {
    expect(accelerationOf(around(100, 0.01), around(1, 0.01), around(50, 0.1))).toBeUndefined();
  });
});
