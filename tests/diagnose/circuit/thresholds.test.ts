import { describe, expect, it } from 'vitest';
import { marginsOf } from '../../../src/diagnose/circuit/margins.ts';
import { logicLimits, loopLimits } from '../../../src/diagnose/circuit/pin-limits.ts';
import { circuitNamed } from '../../../src/diagnose/circuit/registry.ts';
import { soundRig, standing } from '../../../src/diagnose/circuit/rig.ts';
import { solve } from '../../../src/diagnose/circuit/solve.ts';
import { looks } from '../../../src/diagnose/circuit/state.ts';
import { nominalWorld, wiringOf } from '../../../src/diagnose/circuit/wiring.ts';
import { readingOf } from '../../../src/diagnose/fault-finding/reading-of.ts';

describe('a logic pin reads what its data sheet guarantees and nothing in between', () => {
  it.each([
    // ATmega328P data sheet 7810C: VIL 0.3 VCC, VIH 0.6 VCC from 2.7 to 5.5 V.
    ['cmos 5 V', 5, 1.5, 3],
    // JESD8 LVTTL; 5 V TTL.
    ['lvttl', 3.3, 0.8, 2],
    ['ttl', 5, 0.8, 2],
    // 74HC1G14 data sheet, -40 to 85 degrees C: lowest falling and highest rising threshold at three supplies.
    ['schmitt', 2, 0.3, 1.5],
    ['schmitt', 4.5, 0.9, 3.15],
    ['schmitt', 6, 1.2, 4.2],
  ] as const)('%s at %d V: low to %d V, high from %d V', (family, supply, low, high) => {
    const limits = logicLimits(family, supply);
    expect(limits.low).toBeCloseTo(low, 9);
    expect(limits.high).toBeCloseTo(high, 9);
  });

  it.each([
    // STM32F103 table 35: 0.28 (VDD - 2) + 0.8 and 0.41 (VDD - 2) + 1.3; production-tested 0.35 and 0.65 VDD.
    ['STM32F103, standard pin', 1.164, 1.833],
    ['STM32F103, production test', 1.155, 2.145],
    // STM32F050: 0.3 and 0.7 VDD.
    ['STM32F050', 0.99, 2.31],
  ])('3.3 V logic of unknown make is never called sure where %s is not', (_part, low, high) => {
    const limits = logicLimits('cmos 3.3 V', 3.3);
    expect(limits.low).toBeLessThanOrEqual(low);
    expect(limits.high).toBeGreaterThanOrEqual(high - 1e-9);
  });
});

describe('a 24 V input after IEC 61131-2:2007 table 7 (types 2 and 3 from memory)', () => {
  it.each([
    ['IEC 61131-2 type 1', 5, 15, 0.5, 2],
    ['IEC 61131-2 type 2', 5, 11, 2, 6],
    ['IEC 61131-2 type 3', 5, 11, 1.5, 2],
  ] as const)(
    '%s: off to %d V, on from %d V; off to %d mA, on from %d mA',
    (family, offV, onV, offmA, onmA) => {
      const { volts, amps } = loopLimits(family);
      expect(volts).toEqual({ off: offV, on: onV });
      expect(amps.off * 1000).toBeCloseTo(offmA, 9);
      expect(amps.on * 1000).toBeCloseTo(onmA, 9);
    },
  );

  it.each([
    ['IEC 61131-2 type 1', 16, 'conducting'],
    ['IEC 61131-2 type 1', 12, 'uncertain'],
    ['IEC 61131-2 type 3', 12, 'conducting'],
    ['IEC 61131-2 type 3', 9, 'uncertain'],
    ['IEC 61131-2 type 3', 4.5, 'open'],
    ['IEC 61131-2 type 1', 4.5, 'open'],
  ] as const)('%s with %d V on its terminal reads %s', (family, supply, level) => {
    const wiring = wiringOf(circuitNamed('contact-into-fed-optocoupler'), { given: { supply }, family });
    expect(readingOf(wiring, looks.rest, []).level).toBe(level);
  });

  // IEC 60947-5-2 allows a two-wire sensor 1.5 mA when off; IEC 61131-2 made types 2 and 3 for that.
  it.each([
    ['IEC 61131-2 type 1', false],
    ['IEC 61131-2 type 2', true],
    ['IEC 61131-2 type 3', true],
  ] as const)('%s surely ignores the largest leakage of a two-wire sensor: %s', (family, ignores) => {
    const circuit = circuitNamed('two-wire-into-optocoupler');
    const wiring = wiringOf(circuit, { given: { leakage: 1.5e-3 }, family });
    expect(readingOf(wiring, looks.pressed, []).level === 'open').toBe(ignores);
  });
});

describe('a contact on an internal pull-up', () => {
  // ATmega328PB data sheet: pull-up 20 to 50 kohm; limits from 0.3 and 0.6 of 5 V: R * 1.5 / 3.5 and R * 3 / 2.
  it.each([
    [20e3, 8571.4, 30e3],
    [50e3, 21428.6, 75e3],
  ])('of %d ohm is read closed up to %d ohm and open down to %d ohm', (pullUp, highest, lowest) => {
    const wiring = wiringOf(circuitNamed('normally-closed-to-ground'), { given: { 'pull-up': pullUp } });
    const { highestContactOhms, lowestLeakOhms } = marginsOf(wiring);
    // The pin's own microampere, the cable and the clamps move the limits by up to three per cent.
    expect(highestContactOhms / highest).toBeGreaterThan(0.97);
    expect(highestContactOhms / highest).toBeLessThanOrEqual(1.0001);
    expect(lowestLeakOhms / lowest).toBeGreaterThanOrEqual(0.999);
    expect(lowestLeakOhms / lowest).toBeLessThan(1.04);
  });

  // Common practice, no source: what a resistance in the contact does at each usual pull-up, and the current that keeps it clean.
  it.each([
    [1e3, 430, 1500, 5.0],
    [2.2e3, 940, 3300, 2.3],
    [4.7e3, 2000, 7050, 1.06],
    [10e3, 4300, 15e3, 0.5],
    [35e3, 15e3, 52e3, 0.14],
    [47e3, 20e3, 70e3, 0.11],
  ])(
    'of %d ohm: closed to about %d ohm, open from about %d ohm, %d mA through it',
    (pullUp, highest, lowest, mA) => {
      const wiring = wiringOf(circuitNamed('normally-closed-to-ground'), { given: { 'pull-up': pullUp } });
      const margins = marginsOf(wiring);
      expect(Math.abs(margins.highestContactOhms / highest - 1)).toBeLessThan(0.03);
      expect(Math.abs(margins.lowestLeakOhms / lowest - 1)).toBeLessThan(0.04);
      expect(Math.abs((margins.wettingAmps * 1000) / mA - 1)).toBeLessThan(0.04);
    },
  );

  // Common practice, no source: volts at the terminal with a resistance in the contact and 10 kohm to 5 V.
  it.each([
    [0.1, 0.0, 'conducting'],
    [100, 0.05, 'conducting'],
    [1e3, 0.455, 'conducting'],
    [4.7e3, 1.6, 'uncertain'],
    [10e3, 2.5, 'uncertain'],
    [47e3, 4.12, 'open'],
    [100e3, 4.55, 'open'],
  ])('with %d ohm in it stands at %d V and reads %s', (ohms, volts, level) => {
    const wiring = wiringOf(circuitNamed('normally-closed-to-ground'), { given: { 'closed contact': ohms } });
    const network = standing(soundRig(wiring, nominalWorld(wiring)), looks.rest, wiring);
    expect(solve(network).voltsAt('terminal')).toBeCloseTo(volts, 2);
    expect(readingOf(wiring, looks.rest, []).level).toBe(level);
  });
});

describe('an optocoupler’s loop', () => {
  // Common practice, no source: surely on from 2 mA, surely off to 0.5 mA, 1.2 V across the light.
  it.each([
    [24, 2200, undefined, 9.2e3, 43e3],
    [24, 3300, undefined, 8.1e3, 42e3],
    [12, 1000, undefined, 4.4e3, 20.6e3],
    [24, 2200, 1000, undefined, 11e3],
    [12, 1000, 1000, undefined, 5.4e3],
  ])(
    'on %d V through %d ohm, bleed %s: contact to %s ohm, leak down to %d ohm',
    (supply, series, bleed, contact, leak) => {
      const given = { supply, series, ...(bleed === undefined ? {} : { bleed }) };
      const margins = marginsOf(wiringOf(circuitNamed('contact-into-fed-optocoupler'), { given }));
      if (contact !== undefined)
        expect(Math.abs(margins.highestContactOhms / contact - 1)).toBeLessThan(0.03);
      // The rule takes 1.2 V across the light at any current; at half a milliampere it drops less.
      expect(Math.abs(margins.lowestLeakOhms / leak - 1)).toBeLessThan(0.12);
    },
  );

  // Common practice, no source: what another supply than the input was made for drives through it.
  it.each([
    [24, 2200, 10.4],
    [24, 3300, 6.9],
    [24, 4700, 4.9],
    [12, 3300, 3.3],
    [5, 3300, 1.15],
    [24, 1000, 22.8],
    [24, 330, 69],
  ])('%d V through %d ohm drives %d mA', (supply, series, mA) => {
    const wiring = wiringOf(circuitNamed('contact-into-fed-optocoupler'), { given: { supply, series } });
    expect(Math.abs((marginsOf(wiring).wettingAmps * 1000) / mA - 1)).toBeLessThan(0.02);
  });
  it('works on some units only, on 5 V instead of 24 V', () => {
    const wiring = wiringOf(circuitNamed('contact-into-fed-optocoupler'), {
      given: { supply: 5, series: 3300 },
    });
    expect(readingOf(wiring, looks.rest, []).level).toBe('uncertain');
  });
});
