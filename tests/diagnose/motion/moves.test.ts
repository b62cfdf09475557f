import { describe, expect, it } from 'vitest';
import { accelerationOf, moveOver, peakNeeded } from '../../../src/diagnose/motion/ramp.ts';

describe('moves from rest to rest', () => {
  // v = √(2abD/(a+b)), from v²/2a + v²/2b = D.
  it.each([
    [10, 100, 100, 31.622777, 0.632456],
    [10, 100, 200, 36.514837, 0.547723],
  ])(
    'too short for their speed peak at a triangle: %f mm, %f and %f mm/s2',
    (distance, up, down, peak, seconds) => {
      expect(moveOver(distance, 1000, up, down)).toEqual({
        peak: expect.closeTo(peak, 6),
        seconds: expect.closeTo(seconds, 6),
        shape: 'triangle',
      });
    },
  );

  // Half the speed change on either side: D/v + v/2a + v/2b.
  it.each([
    [100, 50, 100, 100, 2.5],
    [100, 50, 100, 200, 2.375],
    [25, 50, 100, 100, 1],
  ])('long enough hold their speed: %f mm at %f mm/s', (distance, speed, up, down, seconds) => {
    expect(moveOver(distance, speed, up, down)).toMatchObject({
      peak: speed,
      seconds: expect.closeTo(seconds, 12),
    });
  });

  // K. Lynch, F. Park, "Modern Robotics", 9.2.2.2: T = (a + v²)/(v·a) over a way of 1 where v²/a ≤ 1, else T = 2/√a and peak √a (from memory).
  it('agree with the unit path of a robotics text', () => {
    expect(moveOver(1, 0.5, 1)).toMatchObject({ seconds: expect.closeTo(2.5, 12), shape: 'trapezoid' });
    expect(moveOver(1, 5, 4)).toMatchObject({ seconds: expect.closeTo(1, 12), peak: expect.closeTo(2, 12) });
  });

  // A third of the time each: v = 1.5·D/T, a = v/(T/3); 50 m in 35 s.
  it('in three equal thirds peak at one and a half times the mean speed', () => {
    const peak = (1.5 * 50) / 35;
    const acceleration = peak / (35 / 3);
    expect([peak, acceleration]).toEqual([expect.closeTo(2.142857, 6), expect.closeTo(0.183673, 6)]);
    expect(moveOver(50, peak, acceleration).seconds).toBeCloseTo(35, 9);
    expect(peakNeeded(50, 35, acceleration)).toBeCloseTo(2.142857, 6);
  });

  // D 10 000, T 20, a 1000, b 1100: the mean speed 500 must be exceeded; by the quadratic 512.53771.
  it('with unlike ramps need a peak above the mean speed', () => {
    expect(peakNeeded(10000, 20, 1000, 1100)).toBeCloseTo(512.53771, 5);
    expect(peakNeeded(10000, 1, 1000)).toBeUndefined();
  });

  it('do not follow from nothing', () => {
    expect(() => moveOver(0, 1, 1)).toThrow(RangeError);
    expect(() => moveOver(1, 1, 0)).toThrow(RangeError);
  });
});

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
