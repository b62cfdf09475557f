import { describe, expect, it } from 'vitest';
import { type Network, nodesOf, resistor } from '../../../src/diagnose/circuit/network.ts';
import { solve } from '../../../src/diagnose/circuit/solve.ts';

const source = (name: string, from: string, to: string, volts: number) =>
  ({ kind: 'voltage', name, from, to, volts }) as const;
const current = (name: string, from: string, to: string, amps: number) =>
  ({ kind: 'current', name, from, to, amps }) as const;
/** Saturation and ideality of both networks below. */
const led = (from: string, to: string) =>
  ({ kind: 'diode', name: 'led', from, to, saturation: 1e-18, ideality: 1.5 }) as const;

describe('nodal analysis of published and independently solved networks', () => {
  // J. W. Nilsson, S. A. Riedel, Electric Circuits, 7th edition, problem 4.9 (element values from its printed equations).
  it('gives 120 V and 96 V for two current sources and four resistors', () => {
    const solution = solve([
      current('six', '0 V', '1', 6),
      current('one', '2', '0 V', 1),
      resistor('a', '1', '0 V', 40),
      resistor('b', '1', '2', 8),
      resistor('c', '2', '0 V', 80),
      resistor('d', '2', '0 V', 120),
    ]);
    expect(solution.voltsAt('1')).toBeCloseTo(120, 9);
    expect(solution.voltsAt('2')).toBeCloseTo(96, 9);
  });

  // ngspice 39, temp = tnom = 26.85 degrees C, gmin = 1e-15, run apart from this project.
  const loop = (contact: number, supply = 24, series = 4700): Network => [
    source('supply', 'vs', '0 V', supply),
    resistor('core 1', 'vs', 'a', 0.842),
    resistor('contact', 'a', 'b', contact),
    resistor('core 2', 'b', 'c', 0.842),
    resistor('leak', 'c', '0 V', 1e6),
    resistor('series', 'c', 'd', series),
    led('d', 'e'),
    resistor('foot', 'e', '0 V', 10),
  ];
  it.each([
    [
      'a closed contact',
      loop(0.05),
      [23.99594115, 23.99570012, 23.99164127, 1.44810862, 0.04796496309],
      4.82048795e-3,
    ],
    [
      'a worn contact',
      loop(2200),
      [23.99723539, 16.77378072, 16.77101611, 1.417914017, 0.03266617467],
      3.28338848e-3,
    ],
    [
      'an open contact',
      loop(1e8),
      [23.9999998, 0.2376239578, 0.2376237577, 0.2376237577, 6.95e-15],
      2.376237624e-7,
    ],
    [
      'a 5 V supply',
      loop(0.05, 5, 470),
      [4.993733528, 4.993361409, 4.987094937, 1.491526745, 0.07437379132],
      7.44236623e-3,
    ],
  ] as const)('agrees to a few microvolts in an optocoupler loop with %s', (_case, network, volts, amps) => {
    const solution = solve(network);
    for (const [at, node] of ['a', 'b', 'c', 'd', 'e'].entries())
      expect(Math.abs((solution.voltsAt(node) ?? Number.NaN) - (volts[at] ?? Number.NaN))).toBeLessThan(5e-6);
    expect(Math.abs(-solution.ampsIn('supply') / amps - 1)).toBeLessThan(1e-6);
  });

  const pulledUp = (contact: number, core: number, ...fault: Network): Network => [
    source('supply', 'vcc', '0 V', 5),
    resistor('pull-up', 'vcc', 'a', 1000),
    led('a', 'b'),
    resistor('series', 'b', 'c', 100),
    resistor('core 1', 'c', 'd', core),
    resistor('contact', 'd', 'e', contact),
    resistor('core 2', 'e', '0 V', 0.842),
    resistor('leak', 'd', '0 V', 1e6),
    current('pin leak', 'a', '0 V', 1e-6),
    ...fault,
  ];
  it.each([
    [
      'closed',
      pulledUp(0.05, 0.842),
      [1.719084323, 0.3336789388, 0.005687371173, 0.002925682174, 0.002761686536],
    ],
    ['open', pulledUp(1e9, 0.842), [4.995125393, 3.871127404, 3.870739943, 3.870736681, 3.2592e-9]],
    ['worn', pulledUp(500, 0.842), [2.733564113, 1.362508543, 1.135964954, 1.134057457, 0.001906542141]],
    ['core broken', pulledUp(0.05, 1e9), [4.99899586, 4.140294865, 4.140294451, 3.6931e-9, 3.4861e-9]],
    [
      'shorted to 0 V',
      pulledUp(1e9, 0.842, resistor('fault', 'c', '0 V', 0.01)),
      [1.71399847, 0.328533003, 3.2850015e-5, 3.2849987e-5, 2.77e-14],
    ],
    [
      'shorted to the supply',
      pulledUp(0.05, 0.842, resistor('fault', 'c', 'vcc', 0.01)),
      [4.999, 4.971330262, 4.971330262, 2.557338335, 2.413989774],
    ],
  ] as const)('agrees in a pulled-up input with a coupler, contact %s', (_case, network, volts) => {
    const solution = solve(network);
    for (const [at, node] of ['a', 'b', 'c', 'd', 'e'].entries())
      expect(Math.abs((solution.voltsAt(node) ?? Number.NaN) - (volts[at] ?? Number.NaN))).toBeLessThan(5e-6);
  });
});

describe('networks that have no single answer', () => {
  it('tells which nodes float, and solves the rest', () => {
    const network = [
      source('supply', 'plus', '0 V', 5),
      resistor('pull-up', 'plus', 'terminal', 1e4),
      resistor('island', 'x', 'y', 100),
      current('push', 'x', 'terminal', 1e-3),
      resistor('broken', 'y', '0 V', Number.POSITIVE_INFINITY),
    ];
    const solution = solve(network);
    expect(nodesOf(network).filter((node) => solution.voltsAt(node) === undefined)).toEqual(['x', 'y']);
    // Nothing can push a steady current out of an island.
    expect(solution.voltsAt('terminal')).toBeCloseTo(5, 9);
  });

  it('sees the resistance behind a node: two resistors in parallel', () => {
    const solution = solve([
      source('supply', 'plus', '0 V', 5),
      resistor('up', 'plus', 'n', 6000),
      resistor('down', 'n', '0 V', 3000),
    ]);
    expect(solution.sourceOhms('n')).toBeCloseTo(2000, 6);
    expect(solution.wattsIn('up') + solution.wattsIn('down') + solution.wattsIn('supply')).toBeCloseTo(0, 12);
  });
});

describe('controlled outputs', () => {
  const coupler = (series: number): Network => [
    source('field', 'f', '0 V', 24),
    resistor('series', 'f', 'anode', series),
    led('anode', '0 V'),
    source('logic', 'l', '0 V', 5),
    resistor('pull-up', 'l', 'pin', 1e4),
    {
      kind: 'switch',
      name: 'output',
      from: 'pin',
      to: '0 V',
      closed: true,
      closedOhms: 1,
      openOhms: 1e9,
      when: [{ by: 'current', through: 'led', off: 0.5e-3, on: 2e-3 }],
    },
  ];
  it('conduct once the light is surely there', () => {
    expect(solve(coupler(2200)).voltsAt('pin')).toBeLessThan(0.01);
    expect(solve(coupler(2200)).hangs).toBe(false);
    expect(solve(coupler(1e6)).voltsAt('pin')).toBeGreaterThan(4.99);
  });
  it('depend on the unit in between, and say so', () => {
    const dim = coupler(22_000);
    expect(solve(dim).hangs).toBe(true);
    expect(solve(dim, 0).voltsAt('pin')).toBeLessThan(0.01);
    expect(solve(dim, 1).voltsAt('pin')).toBeGreaterThan(4.99);
  });
});
