import { describe, expect, it } from 'vitest';
import { motionOf } from '../../../src/diagnose/motion/motion.ts';
import { positionQuantum, positionStep } from '../../../src/diagnose/motion/quantum.ts';
import { cruiseSpeed } from '../../../src/diagnose/motion/speed.ts';
import { axisTrack } from '../../../src/diagnose/motion/track.ts';
import { turningPoint } from '../../../src/diagnose/motion/turn.ts';
import { mm } from '../../../src/model/units.ts';
import { course, report, seenMotion, windowOf } from './reports.ts';

const there = [{ wait: 900 }, { by: 30, speed: 20 }, { wait: 900 }];
const thereAndBack = [{ wait: 900 }, { by: 30, speed: 20 }, { by: -12, speed: 10 }, { wait: 900 }];

describe('rest and motion in a row of reports', () => {
  it('are told apart, and a turn parts two ways', () => {
    expect(course(seenMotion({ plan: there, acceleration: 200 }).motion)).toBe('still + still');
    expect(course(seenMotion({ plan: thereAndBack, acceleration: 200 }).motion)).toBe('still + - still');
  });

  it.each([
    ['a number that flickers by its rounding', { dither: 1 }],
    ['reports sent late', { jitter: 0.4 }],
    ['a fifth of the reports lost', { loss: 0.2 }],
    ['all of these', { dither: 1, jitter: 0.4, loss: 0.2 }],
    ['five reports a second', { period: 200 }],
  ])('are the same with %s', (_, trouble) => {
    for (let seed = 1; seed <= 25; seed++)
      expect(course(seenMotion({ plan: thereAndBack, acceleration: 200, seed, ...trouble }).motion)).toBe(
        'still + - still',
      );
  });

  it('are the same for the slowest approach anyone sets, on a coarse step', () => {
    const plan = [{ wait: 600 }, { by: 1, speed: 0.4 }, { wait: 600 }];
    expect(course(seenMotion({ plan, step: 0.025, period: 10, dither: 1 }).motion)).toBe('still + still');
  });

  it('make no rest of a pause shorter than a tenth of a second', () => {
    const plan = [{ wait: 900 }, { by: 10, speed: 20 }, { wait: 50 }, { by: 10, speed: 20 }, { wait: 900 }];
    expect(course(seenMotion({ plan, period: 10 }).motion)).toBe('still + still');
  });

  it('do not run on over a gap in the stream', () => {
    const readings = [0, 20, 40, 60, 80, 100, 120].map((at) => report(at, at / 10));
    const after = [0, 20, 40, 60, 80, 100, 120].map((at) => report(at, 50 + at / 10, { segment: 2 }));
    const motion = motionOf(windowOf([...readings, ...after]), 'X', { step: mm(0.0125) });
    expect(course(motion)).toBe('+ +');
    expect(motion.jumps).toHaveLength(1);
  });

  it('of an axis the stream does not carry are nothing', () => {
    const motion = motionOf(windowOf([report(0, 1)]), 'Q', { step: mm(0.0125) });
    expect([motion.samples, motion.runs]).toEqual([[], []]);
  });
});

describe('the speed of a way', () => {
  it.each([
    [20, 200, 20, {}],
    [20, 200, 20, { jitter: 0.3, loss: 0.1, dither: 1 }],
    [0.4, 100, 20, { dither: 1 }],
    [50, 500, 100, {}],
  ])(
    'is that between its ramps: %f mm/s at %f mm/s2 and a report every %i ms',
    (speed, acceleration, period, trouble) => {
      for (let seed = 1; seed <= 10; seed++) {
        const plan = [{ wait: 300 }, { by: speed * 3, speed }, { wait: 300 }];
        const { motion } = seenMotion({ plan, acceleration, period, seed, ...trouble });
        const way = motion.runs.find((run) => run.kind === 'moving');
        const found = way && cruiseSpeed(motion.samples.slice(way.from, way.to + 1), mm(0.0125));
        expect(Math.abs((found?.value ?? 0) / speed - 1)).toBeLessThan(0.04);
      }
    },
  );

  it('has bounds that rounding alone explains', () => {
    const samples = axisTrack(windowOf([0, 100, 200, 300].map((at) => report(at, at / 100))), 'X');
    expect(cruiseSpeed(samples, mm(0.01))).toMatchObject({
      value: expect.closeTo(10, 9),
      low: expect.closeTo(9.9, 9),
      high: expect.closeTo(10.1, 9),
    });
  });

  it('does not follow from one report', () => {
    expect(cruiseSpeed(axisTrack(windowOf([report(0, 1)]), 'X'), mm(0.01))).toBeUndefined();
  });
});

describe('where an axis turned', () => {
  it('lies between the farthest report and as far as it can have gone and come back between two', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const { motion } = seenMotion({ plan: thereAndBack, seed, period: 50, acceleration: 400 });
      const way = motion.runs.find((run) => run.kind === 'moving');
      const turn = way && turningPoint(motion.samples, way.to, 1);
      expect(turn?.low).toBeLessThanOrEqual(30.0126);
      expect(turn?.high).toBeGreaterThanOrEqual(29.9874);
    }
  });
});

describe('the grid positions are reported on', () => {
  const tracked = (positions: readonly number[]) =>
    axisTrack(windowOf(positions.map((each, i) => report(i * 10, each))), 'X');

  it('is the greatest length that goes into every change', () => {
    expect(positionQuantum(tracked([0, 0.05, 0.125, 0.125, 0.2]))).toBeCloseTo(0.025, 6);
    expect(positionQuantum(tracked([400.0125, 400.025, 400.0625]))).toBeCloseTo(0.0125, 6);
    expect(positionQuantum(tracked([1, 1, 1]))).toBeUndefined();
  });

  it('is never finer than the stream prints, whatever the file says of the motor', () => {
    const coarse = tracked(Array.from({ length: 20 }, (_, i) => i * 0.1));
    expect(positionStep(coarse, mm(0.0125))).toBeCloseTo(0.1, 6);
    expect(positionStep(tracked([1, 1]), mm(0.0125))).toBe(0.0125);
  });
});
