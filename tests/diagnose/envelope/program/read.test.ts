import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readProgram } from '../../../../src/diagnose/envelope/program/read.ts';
import type { AxisLetter } from '../../../../src/model/machine.ts';

/** low..high of one axis in a system, rounded to a tenth of a micrometre. */
const span = (text: string, axis: AxisLetter, system = 'active') => {
  const found = readProgram(text).boxes.find((box) => box.system === system)?.axes[axis];
  return found && [Number(found.low.toFixed(4)), Number(found.high.toFixed(4))];
};
const why = (text: string) => readProgram(text).notUnderstood.map((each) => `${each.line} ${each.why}`);

describe('how far a program goes', () => {
  it('is told by the ends of its lines, rapid or not', () => {
    const text = 'G21 G90 G0 X10 Y5 Z5\nG1 Z-2 F100\nX40 Y-3\nG0 Z5\nM30';
    expect([span(text, 'X'), span(text, 'Y'), span(text, 'Z')]).toEqual([
      [10, 40],
      [-3, 5],
      [-2, 5],
    ]);
    expect(readProgram(text)).toMatchObject({ motions: 4, unitsAssumed: false, notUnderstood: [] });
  });

  // Letter case, spaces and leading zeros do not matter; comments stand in parentheses (NISTIR 6556, 3.3).
  it('is the same in any spelling', () => {
    expect(span('n10 g00 x +1 0. y 5 (x99)\nG1X-.5;X99', 'X')).toEqual([-0.5, 10]);
  });

  it('ends with the program: what stands after M2 is never run', () => {
    expect(span('G0 X1\nM2\nG0 X99', 'X')).toEqual([1, 1]);
  });

  it('names the line that goes furthest', () => {
    const [box] = readProgram('G0 X0\nX-7\nX50\nX10').boxes;
    expect(box?.axes.X).toMatchObject({ lowLine: 2, highLine: 3 });
  });

  it('is measured in the unit it says, and in the assumed one where it says none', () => {
    expect(span('G20 G0 X1\nG21 X1', 'X')).toEqual([1, 25.4]);
    expect(readProgram('G0 X2', 'inch')).toMatchObject({ unitsAssumed: true });
    expect(readProgram('G0 X2', 'inch').boxes[0]?.axes.X?.high).toBeCloseTo(50.8, 9);
  });

  it('does not turn degrees into inches', () => {
    expect(span('G20 G0 A90', 'A')).toEqual([90, 90]);
  });

  it('takes the time of a dwell, a feed or a spindle speed for no place', () => {
    expect(readProgram('G4 P2\nG1 F100\nS9000 M3\nT2 M6').boxes).toEqual([]);
  });

  it('is counted in the coordinate system each move names', () => {
    const text = 'G54 G0 X10\nG55 G0 X1 Y1\nG59.3 X2\nG53 G0 Z-5';
    expect(span(text, 'X', 'G54')).toEqual([10, 10]);
    expect(span(text, 'X', 'G55')).toEqual([1, 1]);
    expect(span(text, 'X', 'G59.3')).toEqual([2, 2]);
    expect(span(text, 'Z', 'machine')).toEqual([-5, -5]);
  });

  // NISTIR 6556, 3.5.12: G53 holds for its line alone.
  it('is back in work coordinates on the line after G53', () => {
    expect(span('G0 X1\nG53 G0 X400\nX2', 'X')).toEqual([1, 2]);
  });

  // The example of NISTIR 6556, 3.5.18: where X reads 4, G92 x7 makes it read 7.
  it('is counted without the shift that the program itself makes', () => {
    const text = 'G0 X4\nG92 X7\nG1 X9 F10\nG92.1\nX1';
    expect(span(text, 'X')).toEqual([1, 6]);
    expect(readProgram(text).shiftsTemporarily).toBe(true);
  });

  it('gives the first height of Z, for a retract over an offset not yet set', () => {
    expect(readProgram('G21 G0 Z5\nX1\nZ-3').firstZ).toEqual({ system: 'active', value: 5, line: 1 });
  });
});

describe('incremental and absolute programs', () => {
  it('go equally far', () => {
    const moves = fc.array(fc.tuple(fc.integer({ min: -90, max: 90 }), fc.integer({ min: -90, max: 90 })), {
      minLength: 1,
      maxLength: 20,
    });
    fc.assert(
      fc.property(moves, (steps) => {
        let [x, y] = [0, 0];
        const absolute = ['G21 G90 G0 X0 Y0'];
        const incremental = ['G21 G90 G0 X0 Y0', 'G91'];
        for (const [dx, dy] of steps) {
          [x, y] = [x + dx, y + dy];
          absolute.push(`G1 X${x} Y${y}`);
          incremental.push(`G1 X${dx} Y${dy}`);
        }
        for (const axis of ['X', 'Y'] as const)
          expect(span(incremental.join('\n'), axis)).toEqual(span(absolute.join('\n'), axis));
      }),
    );
  });

  it('cannot be followed from a place nobody named', () => {
    expect(why('G91 G0 X5\nG90 X1\nG91 X2')).toEqual(['1 from-unknown-place']);
    expect(span('G91 G0 X5\nG90 X1\nG91 X2', 'X')).toEqual([1, 3]);
  });

  it('lose their place where it is known in another coordinate system only', () => {
    expect(why('G54 G0 X5\nG55 G91 G0 X1')).toEqual(['2 from-unknown-place']);
  });
});

describe('what cannot be followed', () => {
  it.each([
    ['G1 X#1', '1 parameter'],
    ['#1=5', '1 parameter'],
    ['G1 X[2+3]', '1 formula'],
    ['O100 SUB', '1 subprogram'],
    ['G1 X5 ?', '1 stray-characters'],
    ['G1 X5 (never closed', '1 open-comment'],
    ['G777', '1 unknown-code'],
    ['X5', '1 unknown-code'],
    ['/G0 X5', '1 may-be-skipped'],
    ['G0 X5\nG28 Z2', '2 stored-point'],
    ['G10 L2 P1 X3.5 Y17.2', '1 changes-offset'],
    ['G41 D1', '1 cutter-compensation'],
    ['G0 X0\nG38.2 Z-20', '2 probe'],
    ['G92 X0', '1 from-unknown-place'],
    ['G2 X10 Y0 I5', '1 from-unknown-place'],
    ['G0 X0 Y0\nG2 X10 Y0', '2 arc-without-centre'],
    ['G0 X0 Y0\nG2 X10 Y0 I4', '2 arc-radii-differ'],
    ['G0 X0 Y0\nG2 X10 Y0 R4', '2 arc-without-centre'],
    ['G18 G81 X1 Y2 Z-3 R1', '1 cycle-in-other-plane'],
    ['G81 X1 R1', '1 cycle-without-depth'],
  ])('is listed with its line: %j', (text, expected) => {
    expect(why(text)).toEqual([expected]);
  });

  it('does not move the axes that a calibration or a stored point names', () => {
    expect(readProgram('G10 L2 P1 X350 Y172').boxes).toEqual([]);
  });

  it('makes no place out of a formula, and none out of a step from it', () => {
    const text = 'G0 X1 Y1\nG1 X#3 Y2\nG91 X5';
    expect(why(text)).toEqual(['2 parameter', '3 from-unknown-place']);
    expect(span(text, 'X')).toEqual([1, 1]);
  });

  it('still takes the modes of a line read in part', () => {
    expect(span('G20 G0 X#1\nX1', 'X')).toEqual([25.4, 25.4]);
  });

  it('never throws, whatever a file holds', () => {
    fc.assert(fc.property(fc.string({ maxLength: 200 }), (text) => void readProgram(text)));
    const wordy = fc.array(
      fc.constantFrom('G', '2', 'X', '-1.5', '\n', 'I', 'R0', 'G91', ' ', 'G81', 'Z', 'L9', '(', '[', '#'),
      { maxLength: 60 },
    );
    fc.assert(fc.property(wordy, (parts) => void readProgram(parts.join(''))));
  });
});
