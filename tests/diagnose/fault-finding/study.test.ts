import { describe, expect, it } from 'vitest';
import { seeded } from '../../../src/diagnose/circuit/random.ts';
import { circuitNamed } from '../../../src/diagnose/circuit/registry.ts';
import { wiringOf } from '../../../src/diagnose/circuit/wiring.ts';
import { compareWirings } from '../../../src/diagnose/fault-finding/compare.ts';
import { coverageOf } from '../../../src/diagnose/fault-finding/coverage.ts';
import { studyFault } from '../../../src/diagnose/fault-finding/fault-study.ts';
import { faultNamed, faultsOf } from '../../../src/diagnose/fault-finding/registry.ts';
import { studyWiring } from '../../../src/diagnose/fault-finding/study.ts';
import type { FaultName } from '../../../src/model/fault-names.ts';
import type { WiringName } from '../../../src/model/wiring-names.ts';

const wirings = [
  'normally-open-to-ground',
  'normally-closed-to-ground',
  'normally-open-to-supply',
  'normally-closed-to-supply',
] as const satisfies readonly WiringName[];

/** Common practice, no source: which wiring shows which fault with nobody at the switch. */
const shown: readonly (readonly [
  what: string,
  toGround: FaultName,
  toSupply: FaultName,
  found: readonly boolean[],
])[] = [
  ['a broken signal core', 'signal-core-open', 'signal-core-open', [false, true, false, true]],
  ['a broken return', 'common-core-open', 'common-core-open', [false, true, false, true]],
  ['a signal on 0 V', 'signal-to-0-v', 'fed-signal-to-0-v', [true, false, false, true]],
  ['a signal on +', 'signal-to-plus', 'fed-signal-to-plus', [false, true, true, false]],
  ['a welded contact', 'contact-welded', 'contact-welded', [true, false, true, false]],
  ['two signals together', 'signals-together', 'signals-together', [false, false, false, false]],
  ['a dog that misses', 'dog-misses', 'dog-misses', [false, false, false, false]],
];

describe('what shows at rest', () => {
  it.each(shown)('%s', (_what, toGround, toSupply, found) => {
    const seen = wirings.map((name) => {
      const fault = faultNamed(name.endsWith('ground') ? toGround : toSupply);
      return studyFault(wiringOf(circuitNamed(name)), fault).found === 'at once';
    });
    expect(seen).toEqual(found);
  });

  it.each(wirings)('a lost switch is called dangerous: %s', (name) => {
    const wiring = wiringOf(circuitNamed(name));
    for (const fault of ['signal-core-open', 'dog-misses', 'polarity-inverted', 'pin-dead-open'] as const)
      expect(studyFault(wiring, faultNamed(fault)).dangerous).toBe(true);
    for (const fault of ['bracket-loose', 'spindle-noise'] as const)
      expect(studyFault(wiring, faultNamed(fault)).dangerous).toBe(false);
  });

  it('a stop button that does not remove power is dangerous although its input reads as it should', () => {
    const studied = studyFault(wiringOf(circuitNamed('stop-status')), faultNamed('stop-is-status-only'));
    expect(studied).toMatchObject({ rest: 'inactive', pressed: 'active', found: 'never', dangerous: true });
  });

  it('two inputs crossed move the other input when pressed', () => {
    const studied = studyFault(
      wiringOf(circuitNamed('normally-closed-to-ground')),
      faultNamed('inputs-crossed'),
    );
    expect(studied).toMatchObject({ found: 'next press', besides: true, dangerous: true });
  });
});

describe('the share of dangerous faults found', () => {
  const weighed = (found: 'at once' | 'never', weight: number) =>
    ({ found, dangerous: true, likelihood: { fresh: weight, worked: 0 } }) as const;

  // ISO 13849-1: found over all dangerous failure rates; two parts of rate 4 of which 3 and 2 are found give 62.5 %.
  it('is formed as diagnostic coverage is: 3 of 4 and 2 of 4 are 62.5 %', () => {
    const { atOnce } = coverageOf(
      [weighed('at once', 3), weighed('never', 1), weighed('at once', 2), weighed('never', 2)],
      'fresh',
    );
    expect(atOnce).toBeCloseTo(0.625, 12);
  });

  it('leaves out what is harmless', () => {
    const harmless = { ...weighed('never', 100), dangerous: false };
    expect(coverageOf([weighed('at once', 1), harmless], 'fresh').atOnce).toBe(1);
  });

  it('grows in a normally closed contact over a normally open one, and never shrinks with a press', () => {
    const [open, closed] = [wirings[0], wirings[1]].map((name) => {
      const wiring = wiringOf(circuitNamed(name));
      return coverageOf(
        faultsOf(wiring).map((fault) => studyFault(wiring, fault)),
        'worked',
      );
    });
    expect(closed?.atOnce).toBeGreaterThan((open?.atOnce ?? 1) + 0.2);
    for (const each of [open, closed]) {
      expect(each?.byPress).toBeGreaterThanOrEqual(each?.atOnce ?? 1);
      expect(each?.byUnplugging).toBeGreaterThanOrEqual(each?.byPress ?? 1);
    }
  });
});

describe('wirings side by side', () => {
  const study = (name: WiringName, given = {}) =>
    studyWiring({ wiring: wiringOf(circuitNamed(name), { given }) }, seeded(1), 20);

  it('puts normally closed before normally open, and the stronger pull-up before the weaker', () => {
    const { candidates, stillMissed } = compareWirings([
      study('normally-open-to-ground'),
      study('normally-closed-to-ground', { 'pull-up': 35e3 }),
      study('normally-closed-to-ground', { 'pull-up': 1e3 }),
    ]);
    expect(candidates.at(-1)?.wiring.contact).toBe('normally open');
    // Nothing normally closed to 0 V shows a signal on 0 V, nor a dog that misses.
    expect(stillMissed).toContain('signal-to-0-v');
    expect(stillMissed).toContain('dog-misses');
    expect(stillMissed).not.toContain('signal-core-open');
  });

  it('is the same in whatever order they are named', () => {
    const some = [
      study('normally-open-to-ground'),
      study('normally-closed-to-supply'),
      study('pnp-into-optocoupler'),
    ];
    const names = (studies: typeof some) =>
      compareWirings(studies).candidates.map(({ wiring }) => wiring.name);
    expect(names([...some].reverse())).toEqual(names(some));
  });
});

describe('a wiring that does not work', () => {
  // Common practice, no source: the pairs that are asked about most often.
  it.each([
    'pnp-into-pull-up',
    'npn-into-pull-down',
    'npn-into-fed-optocoupler',
    'pnp-into-drawn-optocoupler',
  ] as const)('is called so, whatever its faults would show: %s', (name) => {
    const { works } = studyWiring({ wiring: wiringOf(circuitNamed(name)) }, seeded(1), 5);
    expect(works).toBe(false);
  });

  it('comes after every one that does', () => {
    const of = (name: WiringName) => studyWiring({ wiring: wiringOf(circuitNamed(name)) }, seeded(1), 5);
    const { candidates } = compareWirings([of('pnp-into-pull-up'), of('normally-open-to-ground')]);
    expect(candidates.map(({ works }) => works)).toEqual([true, false]);
  });
});
