import { describe, expect, it } from 'vitest';
import { originOf, type WorkOffsets, workSystems } from '../../../src/diagnose/envelope/offsets.ts';
import type { AxisLetter } from '../../../src/model/machine.ts';
import { mm } from '../../../src/model/units.ts';

/** What a program reads where the machine stands there: its origin lies at 0. */
const toWork = (offsets: WorkOffsets, axis: AxisLetter, machine: number): number =>
  machine - originOf(offsets, 'G54', axis);

const none: WorkOffsets = { origins: {}, active: 'G54', shift: {}, toolLength: undefined };

describe('work coordinates of RS-274', () => {
  // NISTIR 6556, 3.5.13.
  it('are nine systems, numbered in this order', () => {
    expect(workSystems).toEqual(['G54', 'G55', 'G56', 'G57', 'G58', 'G59', 'G59.1', 'G59.2', 'G59.3']);
  });

  // NISTIR 6556, 3.5.5: G10 L2 P1 x3.5 y17.2 puts the origin of system 1 there, in machine coordinates; Z is left alone.
  it('count from an origin stated in machine coordinates', () => {
    const offsets: WorkOffsets = { ...none, origins: { G54: { X: mm(3.5), Y: mm(17.2) } } };
    expect(toWork(offsets, 'X', 10)).toBeCloseTo(6.5, 12);
    expect(toWork(offsets, 'Y', 20)).toBeCloseTo(2.8, 12);
    expect(toWork(offsets, 'Z', 5)).toBe(5);
  });

  // NISTIR 6556, 3.5.18: X reads 4 with no offset; G92 x7 makes the offset −3; G92 x9 then −5, which is [7 − 9] + (−3).
  it('are shifted by G92 to read what it says', () => {
    expect(toWork({ ...none, shift: { X: mm(-3) } }, 'X', 4)).toBe(7);
    expect(toWork({ ...none, shift: { X: mm(-5) } }, 'X', 4)).toBe(9);
  });

  it('are all nine shifted by one G92', () => {
    const offsets: WorkOffsets = { ...none, shift: { X: mm(-3) } };
    for (const system of workSystems) expect(originOf(offsets, system, 'X')).toBe(-3);
  });

  // NISTIR 6556, 3.5.12.
  it('are left aside by G53: its numbers are machine coordinates', () => {
    const offsets: WorkOffsets = { ...none, origins: { G54: { X: mm(100) } }, shift: { X: mm(5) } };
    expect(originOf(offsets, 'machine', 'X')).toBe(0);
  });

  it('carry the length of the tool on Z where a program uses it', () => {
    const offsets: WorkOffsets = { ...none, origins: { G54: { Z: mm(-60) } }, toolLength: mm(40) };
    expect(originOf(offsets, 'G54', 'Z', true)).toBe(-20);
    expect(originOf(offsets, 'G54', 'Z', false)).toBe(-60);
    expect(originOf(offsets, 'G54', 'X', true)).toBe(0);
  });
});
