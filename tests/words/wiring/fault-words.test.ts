import { describe, expect, it } from 'vitest';
import { circuits } from '../../../src/diagnose/circuit/registry.ts';
import { wiringOf } from '../../../src/diagnose/circuit/wiring.ts';
import { faultsOf } from '../../../src/diagnose/fault-finding/registry.ts';
import { faultNames } from '../../../src/model/fault-names.ts';
import { wiringNames } from '../../../src/model/wiring-names.ts';
import { wiringWords } from '../../../src/words/wiring/circuit-words.ts';
import { faultWords } from '../../../src/words/wiring/fault-words.ts';
import { nodeText } from '../../../src/words/wiring/node-words.ts';
import { ampText, faradText, ohmText, voltText } from '../../../src/words/wiring/quantities.ts';

describe('what is said about a fault', () => {
  it('belongs to a fault, and every fault has it', () => {
    expect(Object.keys(faultWords).sort()).toEqual([...faultNames].sort());
  });

  it.each(faultNames)('%s: a title, one or two sentences, what mends it', (name) => {
    const { title, what, fix } = faultWords[name];
    expect(title.length).toBeLessThanOrEqual(60);
    expect(title).not.toMatch(/\.$/);
    for (const sentence of [what, fix]) expect(sentence).toMatch(/^[A-Z0-9].*\.$/);
  });

  it('carries no number of a list that only its maker knows', () => {
    expect(JSON.stringify([faultWords, wiringWords])).not.toMatch(/\b[ACDF]\d{1,2}\b/);
  });

  it('says where to look wherever no meter can prove it', () => {
    const mute = circuits.flatMap((circuit) => {
      const wiring = wiringOf(circuit);
      return faultsOf(wiring)
        .filter((fault) => fault.proof(wiring).by === 'looking' && !('look' in faultWords[fault.name]))
        .map(({ name }) => name);
    });
    expect(mute).toEqual([]);
  });

  it('names every place where a probe is to be put', () => {
    const unnamed = circuits.flatMap((circuit) => {
      const wiring = wiringOf(circuit);
      return faultsOf(wiring).flatMap((fault) => {
        const proof = fault.proof(wiring);
        if (proof.by === 'looking') return [];
        const places = proof.by === 'amps' ? [proof.through] : [proof.from, proof.to];
        return places
          .filter((place) => nodeText(place, wiring.template) === undefined)
          .map((place) => `${fault.name}: ${place}`);
      });
    });
    expect(unnamed).toEqual([]);
  });
});

describe('quantities', () => {
  it('are written with three digits in the unit of the bench', () => {
    expect([0.05, 0.4, 950, 4270, 9995, 1e6, Number.POSITIVE_INFINITY].map(ohmText)).toEqual([
      '50 mohm',
      '0.4 ohm',
      '950 ohm',
      '4.27 kohm',
      '10 kohm',
      '1 Mohm',
      'none',
    ]);
    expect([0.0104, 371e-6, 0].map(ampText)).toEqual(['10.4 mA', '371 µA', '0 A']);
    expect([100e-9, 10e-6].map(faradText)).toEqual(['100 nF', '10 µF']);
    expect([0, -1e-9, 0.0004, 4.995, -24, 23.19].map(voltText)).toEqual([
      '0.000 V',
      '0.000 V',
      '0.000 V',
      '5.00 V',
      '-24.00 V',
      '23.19 V',
    ]);
  });
});

it('every wiring has its words', () => {
  expect(Object.keys(wiringWords).sort()).toEqual([...wiringNames].sort());
});
