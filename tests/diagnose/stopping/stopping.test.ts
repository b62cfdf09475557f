import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fastestThatStops, stoppingDistance } from '../../../src/diagnose/stopping/distance.ts';
import { judgeStopping } from '../../../src/diagnose/stopping/judge.ts';
import { mm } from '../../../src/model/units.ts';

describe('the way to a standstill', () => {
  // OpenStax College Physics, "How Far Does a Car Go When Coming to a Halt?": 30.0 m/s, in metres.
  it('agrees with a textbook car on a dry and on a wet road', () => {
    const at = (acceleration: number, reaction = 0) =>
      stoppingDistance({ speed: 30, acceleration, reaction });
    expect(Math.abs(at(7) - 64.3)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(at(5) - 90)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(at(7, 500) - 79.3)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(at(5, 500) - 105)).toBeLessThanOrEqual(0.5);
  });

  // Worked by hand from v·t + v²/2a: 0.5 + 2.5, 0.125 + 1.25, 0.010 + 0.050 mm.
  it.each([
    [50, 10, 500, 3],
    [25, 5, 250, 1.375],
    [5, 2, 250, 0.06],
  ])('of a switch at %f mm/s, %f ms, %f mm/s2', (speed, reaction, acceleration, way) => {
    expect(stoppingDistance({ speed, acceleration, reaction })).toBeCloseTo(way, 12);
  });

  it('is a quarter and more at half the speed', () => {
    const [whole, half] = [50, 25].map((speed) =>
      stoppingDistance({ speed, acceleration: 500, reaction: 0 }),
    );
    expect((half ?? 0) / (whole ?? 1)).toBeCloseTo(0.25, 12);
  });

  it('does not follow without braking', () => {
    expect(() => stoppingDistance({ speed: 1, acceleration: 0, reaction: 0 })).toThrow(RangeError);
    expect(() => fastestThatStops(1, -1, 0)).toThrow(RangeError);
  });

  it('is just used up by the highest speed that stops within it', () => {
    const positive = (max: number) => fc.double({ min: 0.001, max, noNaN: true });
    fc.assert(
      fc.property(
        positive(100),
        positive(5000),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (room, acceleration, reaction) => {
          const speed = fastestThatStops(room, acceleration, reaction);
          expect(stoppingDistance({ speed, acceleration, reaction })).toBeCloseTo(room, 6);
        },
      ),
    );
    expect(fastestThatStops(0, 250, 5)).toBe(0);
  });

  // v = a(√(t² + 2s/a) − t) with 0.5 mm, 250 mm/s2, 5 ms: 14.62 mm/s, by hand.
  it('allows 877 mm/min on half a millimetre of overtravel at 250 mm/s2 and 5 ms', () => {
    expect(fastestThatStops(0.5, 250, 5) * 60).toBeCloseTo(877, 0);
  });
});

describe('a stop against what the switch and the machine leave room for', () => {
  const approach = { speed: 15, acceleration: 300, reaction: 10 };
  const seen = [{ low: mm(0.34), high: mm(0.78) }];

  it('fits where even the longest possible stop stays within seven tenths of the overtravel', () => {
    const judged = judgeStopping({ approach, observed: seen, overtravel: mm(3), toHardStop: mm(5) });
    expect(judged).toMatchObject({ says: 'fits', room: { mm: expect.closeTo(2.1, 9), from: 'overtravel' } });
    expect(judged.computed).toBeCloseTo(0.525, 9);
    expect(judged.halved).toBeCloseTo(0.075 + 0.09375, 9);
  });

  it('overruns by the way that is certainly too much', () => {
    const judged = judgeStopping({ approach, observed: [], overtravel: mm(0.5), toHardStop: undefined });
    expect(judged).toMatchObject({ says: 'overruns', over: expect.closeTo(0.525 - 0.35, 9) });
    expect((judged.fastest ?? 99) < 15).toBe(true);
  });

  it('is bounded by the metal where the dog keeps the switch operated all the way', () => {
    const judged = judgeStopping({
      approach,
      observed: seen,
      overtravel: mm(0.5),
      toHardStop: mm(4),
      dogCovers: true,
    });
    expect(judged).toMatchObject({ says: 'fits', room: { mm: 3, from: 'hard stop' } });
  });

  it('seen longer than speed, braking and reaction explain says that one of them is not as told', () => {
    const judged = judgeStopping({
      approach,
      observed: [{ low: mm(1.4), high: mm(1.9) }],
      overtravel: mm(3),
      toHardStop: undefined,
    });
    expect(judged).toMatchObject({ worseThanDeclared: true, says: 'fits' });
  });

  it('is not judged by reports too far apart to tell, nor without any room known', () => {
    const vague = [{ low: mm(0), high: mm(9) }];
    expect(judgeStopping({ approach, observed: vague, overtravel: mm(3), toHardStop: undefined }).says).toBe(
      'unknown',
    );
    expect(
      judgeStopping({ approach, observed: seen, overtravel: undefined, toHardStop: undefined }).says,
    ).toBe('unknown');
    expect(judgeStopping({ approach: {}, observed: [], overtravel: mm(3), toHardStop: undefined }).says).toBe(
      'unknown',
    );
  });
});
