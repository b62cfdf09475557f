import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeRepeatability, periodFor, type Trip } from '../../../src/diagnose/repeatability/judge.ts';
import { mm } from '../../../src/model/units.ts';

const trip = (low: number, width = 0.002): Trip => ({ place: { low: mm(low), high: mm(low + width) } });
const good = [0, 0.004, 0.001, 0.006, 0.002, 0.003, 0.005, 0.001, 0.004, 0.002].map((each) =>
  trip(-22 + each),
);

const never = (): never => {
  throw new Error('ten trips are judged');
};

describe('how well an axis comes back to its switch', () => {
  it('is kept where even the furthest ends of all trips lie within the tolerance', () => {
    expect(judgeRepeatability(good, mm(0.05))?.says).toBe('within');
  });

  // c4 of 10 runs 0.972659 (ASTM MNL 7); t of 9 degrees of freedom at 0.975 is 2.262 (NIST/SEMATECH e-Handbook 1.3.6.7.2).
  it('is told with what so few runs hide of its spread, and with where the true mean lies', () => {
    const { figures, unbiased = 0, mean95 } = judgeRepeatability(good, mm(0.05)) ?? never();
    expect(unbiased / figures.s).toBeCloseTo(1 / 0.972659, 5);
    const half = ((mean95?.high ?? 0) - (mean95?.low ?? 0)) / 2;
    expect((half / figures.s) * Math.sqrt(10)).toBeCloseTo(2.262, 3);
    expect(judgeRepeatability([trip(0)], mm(0.05))).toMatchObject({ unbiased: undefined, mean95: undefined });
  });

  it('is broken only where even the nearest ends lie further apart', () => {
    expect(judgeRepeatability([...good, trip(-21.9)], mm(0.05))?.says).toBe('beyond');
    expect(judgeRepeatability([trip(0, 0.04), trip(0.06, 0.04), trip(0.01)], mm(0.05))?.says).toBe(
      'too-coarse',
    );
  });

  it('is not to be told by a stream that is too slow for the speed', () => {
    const coarse = good.map(({ place }) => trip(place.low, 0.3));
    expect(judgeRepeatability(coarse, mm(0.05))).toMatchObject({
      says: 'too-coarse',
      blur: expect.closeTo(0.3, 9),
    });
    // Half a tolerance of 0.05 mm for the blur, at 60 mm/min and steps of 0.005 mm: 20 ms.
    expect(periodFor(mm(0.05), 1, mm(0.005))).toBeCloseTo(20, 9);
  });

  it('is measured where a gauge was read on every run, and commanded where one reading is missing', () => {
    const gauged = good.map((each, i) => ({ ...each, gauge: mm(0.002 * i) }));
    expect(judgeRepeatability(gauged, mm(0.05))).toMatchObject({ source: 'measured', blur: 0 });
    expect(judgeRepeatability([...gauged, trip(-22)], mm(0.05))?.source).toBe('commanded');
  });

  it('says nothing of two runs', () => {
    expect(judgeRepeatability(good.slice(0, 2), mm(1))?.says).toBe('too-few');
    expect(judgeRepeatability([], mm(1))).toBeUndefined();
  });

  it('does not depend on where zero is, nor on the unit', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -0.05, max: 0.05, noNaN: true }), { minLength: 3, maxLength: 12 }),
        fc.integer({ min: -500, max: 500 }),
        (offsets, zero) => {
          const at = (shift: number, unit: number) =>
            judgeRepeatability(
              offsets.map((each) => trip((each + shift) * unit, 0.002 * unit)),
              mm(0.05 * unit),
            );
          const [here, there, inches] = [at(0, 1), at(zero, 1), at(0, 1 / 25.4)];
          expect(there?.figures.s).toBeCloseTo(here?.figures.s ?? Number.NaN, 9);
          expect((inches?.figures.s ?? Number.NaN) * 25.4).toBeCloseTo(here?.figures.s ?? Number.NaN, 9);
        },
      ),
    );
  });
});
