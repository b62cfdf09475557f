import { describe, expect, it } from 'vitest';
import { circuits } from '../../../src/diagnose/circuit/registry.ts';
import { looks, state } from '../../../src/diagnose/circuit/state.ts';
import { type Wiring, wiringOf } from '../../../src/diagnose/circuit/wiring.ts';
import type { Fault } from '../../../src/diagnose/fault-finding/fault.ts';
import { readingOf } from '../../../src/diagnose/fault-finding/reading-of.ts';
import { faultsOf } from '../../../src/diagnose/fault-finding/registry.ts';
import { healthy, signatures } from './signatures.ts';

const letters = {
  conducting: 'C',
  open: 'O',
  uncertain: 'X',
  floats: 'X',
  flickers: 'F',
  shorted: 'C',
  cut: 'O',
} as const;
const columns = [
  'rest',
  'pressed',
  'pressed by machine',
  'let go',
  'unplugged at controller',
  'unplugged',
  'linked at controller',
  'linked at switch',
] as const satisfies readonly (keyof typeof looks)[];

/** Wirings that work at all; a mismatched pair never changes, and four states of a window say more than these letters. */
const isSound = (wiring: Wiring): boolean =>
  wiring.family !== 'window' &&
  readingOf(wiring, looks.rest, []).level !== readingOf(wiring, looks.pressed, []).level;

const wirings = circuits.flatMap((circuit) =>
  (['normally open', 'normally closed'] as const).map((contact) => {
    // The leakage that this fault is about is what types 2 and 3 forgive.
    const plain =
      circuit.name === 'two-wire-into-optocoupler'
        ? ({ given: { bleed: 2200 }, family: 'optocoupler loop' } as const)
        : {};
    return wiringOf(circuit, { contact, ...plain });
  }),
);

const expected = (cell: string, { contact }: Wiring): string =>
  cell.includes('/') ? (cell.split('/')[contact === 'normally open' ? 0 : 1] ?? '') : cell;

function misread(wiring: Wiring, faults: readonly Fault[], row: readonly string[]): readonly string[] {
  return columns.flatMap((column, at) => {
    const read = letters[readingOf(wiring, looks[column], faults).level];
    const allowed = expected(row[at] ?? '', wiring);
    return allowed.includes(read) ? [] : [`${column}: ${read}, not ${allowed}`];
  });
}

describe.each(
  wirings.filter(isSound).map((wiring) => [wiring.circuit.name, wiring.contact, wiring] as const),
)('%s, %s', (_name, _contact, wiring) => {
  it('reads as its contact stands, and open when unplugged', () => {
    expect(misread(wiring, [], healthy)).toEqual([]);
  });

  it('reads under every fault what an electrician expects of it', () => {
    const wrong = faultsOf(wiring).flatMap((fault) =>
      misread(wiring, [fault], signatures[fault.name]).map((each) => `${fault.name}: ${each}`),
    );
    expect(wrong).toEqual([]);
  });
});

describe('faults that only show while the machine runs', () => {
  const level = (
    name: (typeof circuits)[number]['name'],
    fault: string,
    change: Parameters<typeof state>[0],
  ) => {
    const circuit = circuits.find((each) => each.name === name);
    if (!circuit) throw new Error(name);
    const wiring = wiringOf(circuit);
    return readingOf(
      wiring,
      state(change),
      faultsOf(wiring).filter((each) => each.name === fault),
    ).level;
  };
  // Common practice, no source.
  it('noise flips an open line on a pull-up and not one that a contact holds down', () => {
    expect(level('normally-open-to-ground', 'spindle-noise', { running: 'spindle' })).toBe('flickers');
    expect(level('normally-closed-to-ground', 'spindle-noise', { running: 'spindle' })).toBe('conducting');
    expect(level('normally-open-to-ground', 'spindle-noise', { running: 'drives' })).toBe('open');
  });
  it('noise needs the cable: with the plug out at the controller the input is quiet', () => {
    expect(
      level('normally-open-to-ground', 'spindle-noise', { running: 'spindle', plug: 'out at controller' }),
    ).toBe('open');
    expect(
      level('normally-open-to-ground', 'spindle-noise', { running: 'spindle', plug: 'out at switch' }),
    ).toBe('flickers');
  });
  it('a weak pull-up is flipped by what a strong one ignores', () => {
    expect(level('normally-open-to-ground', 'pull-resistor-weak', { running: 'axis' })).toBe('flickers');
    expect(level('normally-open-to-ground', 'pull-resistor-weak', {})).toBe('open');
  });
  it('motor current in the return lifts a closed contact out of its low level', () => {
    expect(level('normally-closed-to-ground', 'shared-return', { running: 'drives' })).toBe('flickers');
  });
  it('a core that breaks when bent shows while the axis moves or the cable is bent', () => {
    expect(level('normally-closed-to-ground', 'core-breaks-when-flexed', { running: 'axis' })).toBe(
      'flickers',
    );
    expect(level('normally-closed-to-ground', 'core-breaks-when-flexed', { handling: 'cable flexed' })).toBe(
      'flickers',
    );
    expect(level('normally-closed-to-ground', 'core-breaks-when-flexed', {})).toBe('conducting');
  });
  it('a tap of a twentieth of a second gets lost in a filter that is too slow', () => {
    const tapped = { actuation: 'tapped' } as const;
    expect(level('normally-closed-to-ground', 'filter-too-long', tapped)).toBe('conducting');
    expect(level('normally-closed-to-ground', 'filter-wrong-value', tapped)).toBe('conducting');
    expect(level('normally-closed-to-ground', 'polarity-inverted', tapped)).toBe('open');
  });
});

describe('every fault', () => {
  it('can happen to at least one wiring', () => {
    const possible = new Set(wirings.flatMap((wiring) => faultsOf(wiring).map(({ name }) => name)));
    expect(Object.keys(signatures).filter((name) => ![...possible].some((each) => each === name))).toEqual(
      [],
    );
  });
});
