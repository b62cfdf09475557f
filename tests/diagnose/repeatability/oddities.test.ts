import { describe, expect, it } from 'vitest';
import {
  dependenceOf,
  driftOf,
  grubbsLimit,
  outlierOf,
} from '../../../src/diagnose/repeatability/oddities.ts';
import { certified } from './reference-data.ts';

describe('one run that does not belong', () => {
  // NIST/SEMATECH e-Handbook 1.3.5.17.1: eight readings of G. Tietjen and R. Moore; G 2.4687, one-sided limit 2.032 (from memory).
  const readings = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];

  it('is named with its distance', () => {
    expect(outlierOf(readings)).toMatchObject({
      index: 7,
      value: 245.57,
      distance: expect.closeTo(2.4687, 3),
    });
  });

  it('is judged by the tabled limits', () => {
    expect(grubbsLimit(8, 0.1)).toBeCloseTo(2.032, 3);
    // F. Grubbs, Technometrics 11 (1969) 1, two-sided 5 % (from memory).
    expect(grubbsLimit(8, 0.05)).toBeCloseTo(2.13, 2);
    expect(grubbsLimit(10, 0.05)).toBeCloseTo(2.29, 3);
  });

  it('is not looked for in few runs, nor in runs that agree', () => {
    expect(outlierOf(readings.slice(2))).toBeUndefined();
    expect(outlierOf([1, 1, 1, 1, 1, 1, 1, 1])).toBeUndefined();
    expect(outlierOf(readings.slice(0, 7))).toBeUndefined();
  });
});

describe('runs that wander off', () => {
  // F. Anscombe, American Statistician 27 (1973) 17, first set in the order of its x, 4 to 14: slope 0.5001, its error 0.1179.
  const anscombe = [4.26, 5.68, 7.24, 4.82, 6.95, 8.81, 8.04, 8.33, 10.84, 7.58, 9.96];

  it('are found by their slope', () => {
    expect(driftOf(anscombe)).toMatchObject({
      slope: expect.closeTo(0.5001, 4),
      t: expect.closeTo(0.5001 / 0.1179, 2),
      allowed: expect.closeTo(2.262, 3),
    });
  });

  it('are told from runs that only scatter', () => {
    expect(driftOf([0.01, -0.02, 0.0, 0.02, -0.01, 0.01, -0.01, 0.0])).toBeUndefined();
    expect(driftOf([1, 2, 3, 4])).toBeUndefined();
  });
});

// NIST Statistical Reference Datasets: lag-1 of the speed of light (100 values) 0.535, of the lottery (218) −0.121; bounds 0.196 and 0.133.
describe('runs that go with the one before', () => {
  const dataOf = (of: string) => certified.find(({ name }) => name === of)?.data ?? [];

  it('are told where that is no chance, and draws of a lottery are not', () => {
    expect(dependenceOf(dataOf('Michelso'))).toBeCloseTo(0.5352, 4);
    expect(dependenceOf(dataOf('Lottery'))).toBeUndefined();
  });

  it('are not to be had of a few, nor where nothing varies', () => {
    expect(dependenceOf([1, 2, 1, 2])).toBeUndefined();
    expect(dependenceOf([3, 3, 3, 3, 3, 3])).toBeUndefined();
  });
});
