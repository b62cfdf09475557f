import { describe, expect, it } from 'vitest';
import {
  c4,
  chiSquareQuantile,
  deviationInterval,
  meanInterval,
  studentQuantile,
} from '../../../src/diagnose/repeatability/confidence.ts';
import { sampleFigures } from '../../../src/diagnose/repeatability/sample.ts';
import { heights } from './heights.ts';

describe('confidence of a standard deviation', () => {
  // Gear diameters, NIST e-Handbook eda358; limits as printed by Boost.Math, chi_square_std_dev_test.cpp.
  it.each([
    [0.9, 0.00563, 0.00712],
    [0.95, 0.00551, 0.00729],
    [0.99, 0.0053, 0.00766],
  ])('of one hundred gear diameters at %f', (confidence, low, high) => {
    const interval = deviationInterval(0.006278908, 100, confidence);
    expect(interval.low).toBeCloseTo(low, 5);
    expect(interval.high).toBeCloseTo(high, 5);
  });

  it('to twelve digits', () => {
    const { low, high } = deviationInterval(0.006278908, 100);
    expect(low).toBeCloseTo(0.00551292420566, 13);
    expect(high).toBeCloseTo(0.00729405205387, 13);
  });

  // Multipliers of s, the same output of Boost.Math.
  it.each([
    [2, 0.4461, 31.9102],
    [3, 0.5207, 6.2847],
    [4, 0.5665, 3.7285],
    [5, 0.5991, 2.8736],
    [6, 0.6242, 2.4526],
    [7, 0.6444, 2.2021],
    [8, 0.6612, 2.0353],
    [9, 0.6755, 1.9158],
    [10, 0.6878, 1.8256],
    [15, 0.7321, 1.5771],
    [20, 0.7605, 1.4606],
    [30, 0.7964, 1.3443],
    [50, 0.8353, 1.2461],
    [100, 0.878, 1.1617],
  ])('of %i runs', (n, low, high) => {
    const interval = deviationInterval(1, n);
    expect(Math.abs(interval.low - low)).toBeLessThanOrEqual(5.1e-5);
    expect(Math.abs(interval.high - high)).toBeLessThanOrEqual(5.1e-5);
  });

  // Limits of the mean as printed by SAS; of the deviation computed there from the same rule.
  it('of seventy-five heights, and of their mean', () => {
    const { mean, s, n } = sampleFigures(heights);
    expect([mean, s]).toEqual([expect.closeTo(64.5666666667, 9), expect.closeTo(2.18899787842, 10)]);
    const [ofMean, ofS] = [meanInterval(mean, s, n), deviationInterval(s, n)];
    expect([ofMean.low, ofMean.high]).toEqual([expect.closeTo(64.06302, 4), expect.closeTo(65.07031, 4)]);
    expect([ofS.low, ofS.high]).toEqual([expect.closeTo(1.8860829, 6), expect.closeTo(2.6087385, 6)]);
  });

  // NIST e-Handbook 1.3.5.2, ZARR13.
  it('of the mean of one hundred ninety-five flow readings', () => {
    const { low, high } = meanInterval(9.26146, 0.02278881, 195);
    expect([low, high]).toEqual([expect.closeTo(9.258242, 5), expect.closeTo(9.264679, 5)]);
  });

  it('is not to be had of one run', () => {
    expect(() => deviationInterval(0.1, 1)).toThrow(RangeError);
  });
});

describe('tables the intervals stand on', () => {
  // NIST/SEMATECH e-Handbook 1.3.6.7.4.
  it.each([
    [1, [0.001, 0.004, 3.841, 5.024, 6.635]],
    [2, [0.051, 0.103, 5.991, 7.378, 9.21]],
    [3, [0.216, 0.352, 7.815, 9.348, 11.345]],
    [4, [0.484, 0.711, 9.488, 11.143, 13.277]],
    [5, [0.831, 1.145, 11.07, 12.833, 15.086]],
    [9, [2.7, 3.325, 16.919, 19.023, 21.666]],
    [10, [3.247, 3.94, 18.307, 20.483, 23.209]],
    [20, [9.591, 10.851, 31.41, 34.17, 37.566]],
    [30, [16.791, 18.493, 43.773, 46.979, 50.892]],
    [100, [74.222, 77.929, 124.342, 129.561, 135.807]],
  ] as const)('chi-square with %i degrees of freedom', (dof, row) => {
    for (const [i, p] of [0.025, 0.05, 0.95, 0.975, 0.99].entries())
      expect(Math.abs(chiSquareQuantile(p, dof) - (row[i] ?? Number.NaN))).toBeLessThanOrEqual(5.1e-4);
  });

  // NIST/SEMATECH e-Handbook 1.3.6.7.2, upper tails 0.05, 0.025, 0.01, 0.005.
  it.each([
    [1, [6.314, 12.706, 31.821, 63.657]],
    [2, [2.92, 4.303, 6.965, 9.925]],
    [3, [2.353, 3.182, 4.541, 5.841]],
    [5, [2.015, 2.571, 3.365, 4.032]],
    [9, [1.833, 2.262, 2.821, 3.25]],
    [10, [1.812, 2.228, 2.764, 3.169]],
    [30, [1.697, 2.042, 2.457, 2.75]],
    [100, [1.66, 1.984, 2.364, 2.626]],
  ] as const)('Student with %i degrees of freedom', (dof, row) => {
    for (const [i, tail] of [0.05, 0.025, 0.01, 0.005].entries())
      expect(Math.abs(studentQuantile(1 - tail, dof) - (row[i] ?? Number.NaN))).toBeLessThanOrEqual(5.1e-4);
  });

  // ASTM MNL 7, table of control chart factors.
  it.each([
    [2, 0.797885],
    [3, 0.886227],
    [4, 0.921318],
    [5, 0.939986],
    [6, 0.951533],
    [10, 0.972659],
    [25, 0.98964],
  ])('c4 of %i', (n, factor) => {
    expect(c4(n)).toBeCloseTo(factor, 6);
  });
});
