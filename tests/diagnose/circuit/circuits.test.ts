import { describe, expect, it } from 'vitest';
import { corners, drawn } from '../../../src/diagnose/circuit/boards.ts';
import { seeded } from '../../../src/diagnose/circuit/random.ts';
import { circuitNamed, circuits } from '../../../src/diagnose/circuit/registry.ts';
import { soundRig, standing } from '../../../src/diagnose/circuit/rig.ts';
import { solve } from '../../../src/diagnose/circuit/solve.ts';
import { looks } from '../../../src/diagnose/circuit/state.ts';
import type { Choice } from '../../../src/diagnose/circuit/wiring.ts';
import { nominalWorld, wiringOf } from '../../../src/diagnose/circuit/wiring.ts';
import { levelsAtCorners, likelyReadings } from '../../../src/diagnose/fault-finding/likely-readings.ts';
import { faultNamed } from '../../../src/diagnose/fault-finding/registry.ts';
import type { WiringName } from '../../../src/model/wiring-names.ts';

const volts = (name: WiringName, look: keyof typeof looks, node: string, choice: Choice = {}) => {
  const wiring = wiringOf(circuitNamed(name), choice);
  return solve(standing(soundRig(wiring, nominalWorld(wiring)), looks[look], wiring)).voltsAt(node);
};

// Common practice, no source; sums of the stated parts.
describe('voltages of usual inputs', () => {
  it.each([
    ['normally-open-to-ground', 'rest', 'terminal', 5.0],
    ['normally-open-to-ground', 'pressed', 'terminal', 0.0],
    ['normally-closed-to-ground', 'rest', 'terminal', 0.0],
    ['normally-closed-to-ground', 'unplugged', 'terminal', 5.0],
    ['normally-open-to-supply', 'pressed', 'terminal', 5.0],
    ['normally-closed-to-supply', 'pressed', 'terminal', 0.0],
    ['contact-into-fed-optocoupler', 'rest', 'terminal', 24.0],
    ['contact-into-fed-optocoupler', 'rest', 'pin', 0.1],
    ['contact-into-fed-optocoupler', 'pressed', 'pin', 5.0],
    ['contact-into-drawn-optocoupler', 'rest', 'terminal', 0.0],
    ['npn-into-pull-up', 'pressed', 'terminal', 5.0],
    ['pnp-into-divider', 'rest', 'pin', 2.95],
    ['supervised-contact', 'rest', 'pin', 1.56],
    ['supervised-contact', 'pressed', 'pin', 2.96],
    ['supervised-contact', 'unplugged', 'pin', 5.0],
    ['supervised-contact', 'linked at controller', 'pin', 0.0],
  ] as const)('%s, %s: %s stands at about %d V', (name, look, node, expected) => {
    expect(Math.abs((volts(name, look, node) ?? Number.NaN) - expected)).toBeLessThan(0.05);
  });

  it('24 V through 22 kohm and 3.3 kohm is 3.13 V at the pin, 11 V is 1.43 V, 5 V is 0.65 V', () => {
    for (const [supply, pin] of [
      [24, 3.13],
      [11, 1.43],
    ] as const)
      expect(volts('normally-closed-to-supply', 'rest', 'pin', { given: { supply } })).toBeCloseTo(pin, 2);
  });

  it('an open input on a coupler at + shows nearly the supply, less what the light drops at a leak', () => {
    expect(volts('contact-into-drawn-optocoupler', 'pressed', 'terminal')).toBeGreaterThan(22.5);
    expect(volts('contact-into-drawn-optocoupler', 'pressed', 'terminal')).toBeLessThan(23.8);
  });

  it('an NPN output at logic current is a volt and more above 0 V: too much for 3.3 V logic', () => {
    expect(volts('npn-into-pull-up', 'rest', 'terminal')).toBeGreaterThan(0.7);
    expect(volts('npn-into-pull-up', 'rest', 'terminal')).toBeLessThan(1.5);
    const wiring = wiringOf(circuitNamed('npn-into-pull-up'), { given: { 'logic supply': 3.3 } });
    expect(levelsAtCorners(wiring, looks.rest, []).has('uncertain')).toBe(true);
  });

  it('a supervised contact has its bands half way between its four states: 0.78, 2.26 and 3.98 V', () => {
    const wiring = wiringOf(circuitNamed('supervised-contact'));
    const limits = wiring.template.limits(nominalWorld(wiring).numbers, 'window');
    const found = limits.kind === 'window' ? limits.limits : [];
    for (const [at, expected] of [0.78, 2.26, 3.98].entries()) expect(found[at]).toBeCloseTo(expected, 2);
  });

  it('a supervised contact on a plain logic input reads neither at rest nor pressed', () => {
    const wiring = wiringOf(circuitNamed('supervised-contact'), { family: 'cmos 5 V' });
    expect([...levelsAtCorners(wiring, looks.rest, [])]).toContain('uncertain');
    expect([...levelsAtCorners(wiring, looks.pressed, [])]).toContain('uncertain');
  });

  it('a PNP sensor on a pulled-up pin pushes some 17 mA into its clamp', () => {
    const wiring = wiringOf(circuitNamed('pnp-into-pull-up'));
    const network = standing(soundRig(wiring, nominalWorld(wiring)), looks.rest, wiring);
    expect(solve(network).ampsIn('clamp up')).toBeGreaterThan(0.015);
    expect(solve(network).ampsIn('clamp up')).toBeLessThan(0.019);
  });
});

describe('boards as they are bought', () => {
  const wiring = wiringOf(circuitNamed('contact-into-fed-optocoupler'), {
    given: { supply: 5, series: 3300 },
  });

  it('are the same for the same seed and others for another', () => {
    const resistor = (seed: number) => drawn(wiring, seeded(seed)).numbers('series');
    expect(resistor(1)).toBe(resistor(1));
    expect(resistor(1)).not.toBe(resistor(2));
  });

  it('keep every part within its range', () => {
    const random = seeded(3);
    for (let i = 0; i < 200; i++) {
      const { numbers, unit } = drawn(wiring, random);
      expect(numbers('series')).toBeGreaterThanOrEqual(3300 * 0.95);
      expect(numbers('series')).toBeLessThanOrEqual(3300 * 1.05);
      expect(unit).toBeGreaterThanOrEqual(0);
      expect(unit).toBeLessThan(1);
    }
  });

  it('read a marginal input now as closed, now as open, and the shares sum to one', () => {
    const readings = likelyReadings(wiring, looks.rest, [], seeded(4), 300);
    const shares = [...readings.values()];
    expect(shares.reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 12);
    expect(readings.get('inactive') ?? 0).toBeGreaterThan(0.1);
    expect(readings.get('active') ?? 0).toBeGreaterThan(0.1);
  });

  it('read a sound switch alike at every corner, and a broken one too', () => {
    const sound = wiringOf(circuitNamed('normally-closed-to-ground'));
    expect(corners(sound).length).toBe(64);
    expect([...levelsAtCorners(sound, looks.rest, [])]).toEqual(['conducting']);
    expect([...levelsAtCorners(sound, looks.rest, [faultNamed('signal-core-open')])]).toEqual(['open']);
  });

  it('read alike, every one that is drawn, where all corners do: of any circuit, at rest, pressed and unplugged', () => {
    let settled = 0;
    for (const circuit of circuits)
      for (const look of ['rest', 'pressed', 'unplugged'] as const) {
        const wiring = wiringOf(circuit, {});
        const [level, ...others] = levelsAtCorners(wiring, looks[look], []);
        if (others.length > 0 || (level !== 'conducting' && level !== 'open')) continue;
        settled++;
        const drawn = likelyReadings(wiring, looks[look], [], seeded(7), 60);
        expect(drawn.size, `${circuit.name}, ${look}`).toBe(1);
      }
    expect(settled).toBeGreaterThan(circuits.length);
  });
});
