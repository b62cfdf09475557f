import { describe, expect, it } from 'vitest';
import { type Network, resistor } from '../../../src/diagnose/circuit/network.ts';
import type { PinLimits } from '../../../src/diagnose/circuit/pin-limits.ts';
import { crossing, responseOf } from '../../../src/diagnose/circuit/response.ts';
import { ms } from '../../../src/model/units.ts';

/** A pin behind a resistor and a capacitor, driven by a source. */
const filtered = (volts: number, ohms: number, farads: number): Network => [
  { kind: 'voltage', name: 'source', from: 'in', to: '0 V', volts },
  resistor('series', 'in', 'pin', ohms),
  { kind: 'capacitor', name: 'filter', from: 'pin', to: '0 V', farads },
];
const limits = (low: number, high: number): PinLimits => ({
  kind: 'threshold',
  low,
  high,
  lowMeans: 'conducting',
  ceiling: 100,
});

describe('a first-order filter', () => {
  // t = -RC ln(1 - V/Vs): universal table of time constants.
  it.each([
    [0.5, Math.LN2],
    [0.6, 0.916291],
    [0.7, 1.203973],
    [0.9, Math.LN10],
    [0.99, 4.60517],
  ])('passes %d of its step after %d time constants', (part, constants) => {
    expect(crossing(0, 1, part, ms(1))).toBeCloseTo(constants, 6);
  });

  // 10 kohm, 100 nF, 0 to 5 V (ngspice transient analysis, run apart from this project).
  it.each([
    [1.5, 2.5, Math.LN2],
    [1.5, 3.0, 0.916291],
    [1.5, 3.15, 0.994252],
  ])('of 10 kohm and 100 nF rises through %d and surely through %d V after %d ms', (low, high, surely) => {
    const response = responseOf(filtered(0, 1e4, 100e-9), filtered(5, 1e4, 100e-9), limits(low, high));
    expect(response.surelyShows).toBeCloseTo(surely, 5);
    expect(response.mayShow).toBeLessThan(response.surelyShows);
  });

  it('that rose for 5 ms falls to 1.5 V at 6.197212 ms (same run; analytic)', () => {
    const risen = 5 * (1 - Math.exp(-5));
    const falls = responseOf(filtered(risen, 1e4, 100e-9), filtered(0, 1e4, 100e-9), limits(1.5, 3));
    expect(5 + falls.surelyShows).toBeCloseTo(6.197212, 5);
  });

  // OpenStax University Physics 2, section 10.5, wiper example: 12 V to 10 V; 10 mF behind 558.11 ohm takes 10 s.
  it('of 558.11 ohm and 10 mF reaches 10 of 12 V after 10 s', () => {
    const response = responseOf(filtered(0, 558.11, 10e-3), filtered(12, 558.11, 10e-3), limits(1, 10));
    expect(response.surelyShows / 1000).toBeCloseTo(10, 3);
  });

  // OpenStax College Physics, section 21.6: 8.00 uF through 1.00 kohm from 10.0 kV; to 500 V in 8 ms ln 20.
  it('of 1 kohm and 8 uF falls from 10 kV to 500 V in 23.9659 ms', () => {
    const response = responseOf(filtered(10e3, 1e3, 8e-6), filtered(0, 1e3, 8e-6), limits(500, 5000));
    expect(response.surelyShows).toBeCloseTo(23.9659, 4);
  });

  // 74HC1G14 typical thresholds at 4.5 V: rising 2.36 V, falling 1.53 V.
  it('in front of a Schmitt trigger delays a rise by 0.743272 and a fall by 1.078810 time constants', () => {
    expect(crossing(0, 4.5, 2.36, ms(1))).toBeCloseTo(0.743272, 6);
    expect(crossing(4.5, 0, 1.53, ms(1))).toBeCloseTo(1.07881, 5);
  });

  it('never passes a threshold that its end does not reach', () => {
    const response = responseOf(filtered(0, 1e4, 1e-7), filtered(2, 1e4, 1e-7), limits(1.5, 3));
    expect(response.surelyShows).toBe(Number.POSITIVE_INFINITY);
    expect(response.mayShow).toBeLessThan(Number.POSITIVE_INFINITY);
  });
});
