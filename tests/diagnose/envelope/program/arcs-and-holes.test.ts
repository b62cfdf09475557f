import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxOfArc, centreOf } from '../../../../src/diagnose/envelope/program/arc.ts';
import { readProgram } from '../../../../src/diagnose/envelope/program/read.ts';
import type { AxisLetter } from '../../../../src/model/machine.ts';

const span = (text: string, axis: AxisLetter) => {
  const found = readProgram(text).boxes[0]?.axes[axis];
  return found && [Number(found.low.toFixed(4)), Number(found.high.toFixed(4))];
};

describe('how far an arc swings out', () => {
  it('is its furthest points where it passes them, not only its ends', () => {
    // From the right to the top of a circle about the origin, the short way and the long way round.
    expect(span('G0 X10 Y0\nG3 X0 Y10 I-10', 'X')).toEqual([0, 10]);
    expect(span('G0 X10 Y0\nG2 X0 Y10 I-10', 'X')).toEqual([-10, 10]);
    expect(span('G0 X10 Y0\nG2 X0 Y10 I-10', 'Y')).toEqual([-10, 10]);
  });

  it('is the whole circle where it comes back to where it began', () => {
    expect(span('G0 X10 Y0\nG2 X10 Y0 I-10', 'Y')).toEqual([-10, 10]);
    expect(span('G0 X10 Y0\nG2 I-10', 'X')).toEqual([-10, 10]);
  });

  // NISTIR 6556, 3.5.3.1: a positive radius turns through less than half a circle, a negative one through more.
  it('by radius is the short arc, and the long one where the radius is negative', () => {
    expect(span('G0 X0 Y0\nG2 X10 Y0 R10', 'Y')).toEqual([0, Number((10 - Math.sqrt(75)).toFixed(4))]);
    expect(span('G0 X0 Y0\nG2 X10 Y0 R-10', 'Y')).toEqual([0, Number((10 + Math.sqrt(75)).toFixed(4))]);
    expect(span('G0 X0 Y0\nG3 X10 Y0 R10', 'Y')).toEqual([Number((Math.sqrt(75) - 10).toFixed(4)), 0]);
  });

  it('lies in the plane the program chose, and goes along straight on the third axis', () => {
    const helix = 'G17 G0 X10 Y0 Z0\nG3 X-10 Y0 I-10 Z-4';
    expect([span(helix, 'Y'), span(helix, 'Z')]).toEqual([
      [0, 10],
      [-4, 0],
    ]);
    // G18 turns from Z to X: from above the centre, clockwise seen from Y, it swings to negative X first.
    expect(span('G18 G0 Z10 X0\nG3 Z0 X10 K-10', 'X')).toEqual([0, 10]);
    expect(span('G18 G0 Z10 X0\nG2 Z0 X10 K-10', 'X')).toEqual([-10, 10]);
    expect(span('G19 G0 Y10 Z0\nG3 Y0 Z10 J-10', 'Z')).toEqual([0, 10]);
  });

  it('holds every point of the arc and touches it on all four sides', () => {
    const number = fc.double({ min: -50, max: 50, noNaN: true });
    const angle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });
    fc.assert(
      fc.property(
        number,
        number,
        fc.double({ min: 0.5, max: 40, noNaN: true }),
        angle,
        fc.double({ min: 0.01, max: 6.2, noNaN: true }),
        fc.boolean(),
        (cx, cy, radius, start, sweep, clockwise) => {
          const on = (a: number) => [cx + radius * Math.cos(a), cy + radius * Math.sin(a)] as const;
          const way = clockwise ? -1 : 1;
          const points = Array.from({ length: 721 }, (_, i) => on(start + (way * sweep * i) / 720));
          const box = boxOfArc({ from: on(start), to: on(start + way * sweep), centre: [cx, cy], clockwise });
          for (const axis of [0, 1] as const) {
            const all = points.map((point) => point[axis]);
            expect(box.low[axis]).toBeLessThanOrEqual(Math.min(...all) + 1e-9);
            expect(box.high[axis]).toBeGreaterThanOrEqual(Math.max(...all) - 1e-9);
            // A step of 721 falls short of a furthest point by r(1 − cos(sweep/1440)) at most.
            expect(box.low[axis]).toBeGreaterThan(Math.min(...all) - radius * 2e-5 - 1e-9);
            expect(box.high[axis]).toBeLessThan(Math.max(...all) + radius * 2e-5 + 1e-9);
          }
        },
      ),
    );
  });

  it('has a centre as far from both ends as its radius says', () => {
    const number = fc.integer({ min: -50, max: 50 });
    fc.assert(
      fc.property(
        number,
        number,
        number,
        number,
        fc.boolean(),
        fc.boolean(),
        (a, b, c, d, clockwise, long) => {
          const chord = Math.hypot(c - a, d - b);
          fc.pre(chord > 0);
          const radius = chord * 0.8 * (long ? -1 : 1);
          const centre = centreOf([a, b], [c, d], radius, clockwise);
          if (!centre) throw new Error('there is one');
          expect(Math.hypot(centre[0] - a, centre[1] - b)).toBeCloseTo(Math.abs(radius), 9);
          expect(Math.hypot(centre[0] - c, centre[1] - d)).toBeCloseTo(Math.abs(radius), 9);
        },
      ),
    );
    expect(centreOf([0, 0], [10, 0], 4, true)).toBeUndefined();
    expect(centreOf([1, 1], [1, 1], 4, true)).toBeUndefined();
  });
});

// NISTIR 6556, 3.5.16: R is where the cycle retracts to; with G98 it goes back to the old height where that is above R.
describe('drilling cycles', () => {
  it('go down to Z and up to R or to the old height', () => {
    const text = 'G21 G90 G0 Z10\nG99 G81 X5 Y6 Z-8 R2 F100\nX15\nG98 X25 Z-9';
    expect([span(text, 'X'), span(text, 'Y'), span(text, 'Z')]).toEqual([
      [5, 25],
      [6, 6],
      [-9, 10],
    ]);
  });

  it('go up to R where they begin below it', () => {
    expect(span('G90 G0 Z1\nG81 X0 Y0 Z-5 R3', 'Z')).toEqual([-5, 3]);
    // And stay there, with G98 too: the old height lies below R.
    expect(span('G90 G0 Z1\nG98 G81 X0 Y0 Z-5 R3\nG80 G91 G0 Z1', 'Z')).toEqual([-5, 4]);
  });

  // The incremental example of NISTIR 6556, 3.5.16.3: G91 G81 X4 Y5 Z-0.6 R1.8 L3 from (1, 2, 3) (from memory).
  it('repeat L times in incremental mode, each hole a step further', () => {
    const text = 'G90 G0 X1 Y2 Z3\nG91 G81 G98 X4 Y5 Z-0.6 R1.8 L3';
    expect([span(text, 'X'), span(text, 'Y'), span(text, 'Z')]).toEqual([
      [1, 13],
      [2, 17],
      [3, 4.8],
    ]);
  });

  it('end with G80: a number after it is no hole', () => {
    const text = 'G90 G0 Z5\nG81 X0 Y0 Z-5 R1\nG80\nG0 X9';
    expect(span(text, 'X')).toEqual([0, 9]);
  });

  it('do not hold up the reader where a count was mistyped', () => {
    expect(readProgram('G90 G0 X0 Y0 Z0\nG91 G81 X1 Y0 Z-1 R1 L99999999').boxes[0]?.axes.X?.high).toBe(10000);
  });
});
