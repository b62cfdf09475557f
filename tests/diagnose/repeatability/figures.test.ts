import { describe, expect, it } from 'vitest';
import { lagOneCorrelation, sampleFigures } from '../../../src/diagnose/repeatability/sample.ts';
import { certified } from './reference-data.ts';

describe('mean, deviation and correlation of a row of positions', () => {
  it.each(certified)('agree with the certified values of $name', ({ data, mean, s, lagOne, within }) => {
    const figures = sampleFigures(data);
    expect(Math.abs(figures.mean / mean - 1)).toBeLessThanOrEqual(1e-14);
    expect(Math.abs(figures.s / s - 1)).toBeLessThanOrEqual(within);
    expect(lagOneCorrelation(data)).toBeCloseTo(lagOne, 6);
  });

  it('do not lose small spreads on large coordinates, as the one-pass formula does', () => {
    const { data } = certified.find(({ name }) => name === 'NumAcc4') ?? { data: [] };
    const n = data.length;
    const onePass =
      (data.reduce((sum, x) => sum + x * x, 0) - data.reduce((sum, x) => sum + x, 0) ** 2 / n) / (n - 1);
    expect(Math.abs(onePass - 0.01)).toBeGreaterThan(0.01);
    expect(sampleFigures(data).s ** 2).toBeCloseTo(0.01, 8);
  });

  it('refuse nothing, and what is no number', () => {
    expect(() => sampleFigures([])).toThrow(RangeError);
    expect(() => sampleFigures([1, Number.NaN])).toThrow(RangeError);
  });
});
