import { describe, expect, it } from 'vitest';
import {
  atTwenty,
  coreOhmsPerKm,
  gaugeMillimetres,
  loopOhms,
} from '../../../src/diagnose/circuit/conductor.ts';

describe('the resistance of a copper core', () => {
  // IEC 60228 class 5, plain copper, ohm per km at 20 degrees C at most; below 0.5 mm2 DIN VDE 0295.
  it.each([
    [0.14, 134],
    [0.25, 76],
    [0.34, 53],
    [0.5, 39],
    [0.75, 26],
    [1, 19.5],
    [1.5, 13.3],
    [2.5, 7.98],
  ])('of %d mm2 is %d ohm per km', (size, ohms) => {
    expect(coreOhmsPerKm({ in: 'mm2', size })).toBe(ohms);
  });

  // Standard Handbook for Electrical Engineers, ohm per km at 20 degrees C; tables differ by half a per cent.
  it.each([
    [18, 20.95],
    [20, 33.3],
    [22, 53],
    [24, 84.2],
    [26, 134],
    [28, 213],
    [30, 338.6],
  ])('of gauge %d is %d ohm per km', (size, ohms) => {
    expect(Math.abs((coreOhmsPerKm({ in: 'awg', size }) ?? 0) / ohms - 1)).toBeLessThan(0.005);
  });

  it('doubles about every three gauges, grows tenfold with ten, and halves its diameter with six', () => {
    const at = (size: number) => coreOhmsPerKm({ in: 'awg', size }) ?? 0;
    expect(at(23) / at(20)).toBeCloseTo(2, 1);
    expect(at(30) / at(20)).toBeCloseTo(10.16, 1);
    expect(gaugeMillimetres(20) / gaugeMillimetres(26)).toBeCloseTo(2, 1);
  });

  // IEC 60228: factor to 20 degrees C.
  it.each([
    [5, 1.064],
    [25, 0.98],
    [40, 0.926],
    [50, 0.893],
    [70, 0.833],
    [90, 0.781],
  ])('is brought from %d degrees C to 20 by %d', (celsius, factor) => {
    expect(Math.abs(atTwenty(celsius) - factor)).toBeLessThan(5e-4);
  });

  // 10 m of cable are 20 m of copper.
  it.each([
    [0.5, 0.78],
    [0.75, 0.52],
    [1, 0.39],
    [1.5, 0.266],
  ])('of 10 m of %d mm2 is %d ohm there and back, more when warm', (size, ohms) => {
    const loop = loopOhms({ in: 'mm2', size }, 10);
    expect(loop?.nominal).toBeCloseTo(ohms, 9);
    expect(loop?.low).toBeLessThan(ohms);
    expect(loop?.high).toBeGreaterThan(ohms * 1.19);
  });

  it('is unknown for a section that no table lists', () => {
    expect(coreOhmsPerKm({ in: 'mm2', size: 0.2 })).toBeUndefined();
  });
});
