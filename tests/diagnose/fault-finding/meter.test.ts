import { describe, expect, it } from 'vitest';
import { circuitNamed, circuits } from '../../../src/diagnose/circuit/registry.ts';
import { wiringOf } from '../../../src/diagnose/circuit/wiring.ts';
import { shownBy } from '../../../src/diagnose/fault-finding/meter.ts';
import { faultNamed, faultsOf } from '../../../src/diagnose/fault-finding/registry.ts';
import type { FaultName } from '../../../src/model/fault-names.ts';
import type { WiringName } from '../../../src/model/wiring-names.ts';

const shown = (name: WiringName, fault: FaultName, broken: boolean) => {
  const wiring = wiringOf(circuitNamed(name));
  const found = faultNamed(fault);
  return shownBy(found.proof(wiring), wiring, broken ? [found] : []);
};
const value = (least: number, most = least) => ({
  kind: 'value',
  least: expect.closeTo(least, 1),
  most: expect.closeTo(most, 1),
});

// Common practice, no source: what the meter shows on the fault, and on a sound input.
describe('a meter put where it proves a fault', () => {
  it.each([
    ['normally-closed-to-ground', 'signal-core-open', { kind: 'over range' }, value(0.4)],
    ['normally-closed-to-ground', 'signal-to-0-v', value(0), { kind: 'over range' }],
    ['normally-closed-to-ground', 'contact-welded', value(0.05), { kind: 'over range' }],
    ['normally-closed-to-ground', 'contact-never-makes', { kind: 'over range' }, value(0.05)],
    ['normally-closed-to-ground', 'contact-filmed', value(100, 100e3), value(0.05)],
    ['normally-closed-to-ground', 'pull-resistor-missing', { kind: 'wanders' }, value(5)],
    ['normally-closed-to-ground', 'pull-resistor-weak', value(47e3), value(10e3)],
    ['npn-into-pull-up', 'sensor-supply-reversed', value(-24), value(24)],
    ['npn-into-pull-up', 'sensor-supply-missing', value(0), value(24)],
    ['npn-into-pull-up', 'wrong-field-voltage', value(5), value(24)],
    ['normally-closed-to-ground', 'core-breaks-when-flexed', { kind: 'wanders' }, value(0.4)],
    ['normally-closed-to-ground', 'returns-not-joined', { kind: 'over range' }, value(0)],
  ] as const)('%s, %s', (name, fault, faulty, sound) => {
    expect(shown(name, fault, true)).toEqual(faulty);
    expect(shown(name, fault, false)).toEqual(sound);
  });

  it('in a loop shows no current through a burnt-out light, and about 10 mA through a sound one', () => {
    const [faulty, sound] = [true, false].map((broken) =>
      shown('contact-into-fed-optocoupler', 'coupler-light-open', broken),
    );
    expect(faulty).toMatchObject({ kind: 'value', least: expect.closeTo(0, 5) });
    expect(Math.abs(sound?.kind === 'value' ? sound.least : 0)).toBeCloseTo(0.0104, 4);
  });

  it('is asked for only where a probe reaches, and never computed as no number', () => {
    for (const circuit of circuits) {
      const wiring = wiringOf(circuit);
      for (const fault of faultsOf(wiring))
        for (const faults of [[], [fault]]) {
          const found = shownBy(fault.proof(wiring), wiring, faults);
          if (found?.kind === 'value')
            expect(Number.isFinite(found.least) && Number.isFinite(found.most)).toBe(true);
        }
    }
  });
});
