import { type Network, type Node, resistor } from '../circuit/network.ts';
import { standing } from '../circuit/rig.ts';
import { solve } from '../circuit/solve.ts';
import { type State, state } from '../circuit/state.ts';
import type { Wiring } from '../circuit/wiring.ts';
import { rigsWith } from '../fault-finding/reading-of.ts';
import type { Imagined } from './imagined.ts';
import { mixed, type Odds, sure } from './odds.ts';

export type Quantity = 'resistance' | 'voltage' | 'current';

/** A meter put somewhere. Resistance: power off and both ends of the cable undone, or the switch alone. */
export interface Probe {
  readonly quantity: Quantity;
  /** Nodes of the network; for a current, the element it is let flow through. */
  readonly between: (wiring: Wiring) => readonly [Node, Node];
  readonly undone: readonly ('controller' | 'switch')[];
  readonly state: (wiring: Wiring) => Partial<State>;
  /** Where the bins divide, ascending: ohm, share of the supply, or A. */
  readonly limits: readonly number[];
}

/** What a meter may be off by: 2 % of the reading (common practice for a hand-held meter, no source). */
const tolerance = 0.02;

/** "bin 0" below the first limit. Nobody needs to read the figure out: the tool bins it. */
export const bin = (value: number, limits: readonly number[]): string =>
  `bin ${limits.filter((limit) => value >= limit).length}`;

/** Power gone: sources are not there any more. */
const dead = (network: Network): Network =>
  network.filter(({ kind }) => kind !== 'voltage' && kind !== 'current');

const without = (network: Network, ends: Probe['undone']): Network =>
  network.filter(({ name }) => !ends.some((end) => name.endsWith(end === 'controller' ? ' plug' : ' clamp')));

/** A microampere sent through and the voltage it makes; above 20 Mohm a meter says over range. */
function ohmsBetween(network: Network, [from, to]: readonly [Node, Node]): number {
  const probed: Network = [
    ...dead(network),
    // The black lead is where this measurement calls zero; the leak keeps what it is not joined to from floating.
    ...(to === '0 V' ? [] : [resistor('black lead', to, '0 V', 1e-3)]),
    resistor('meter', from, to, 20e6),
    { kind: 'current', name: 'probe', from: to, to: from, amps: 1e-6 },
  ];
  const solution = solve(probed);
  return Math.abs((solution.voltsAt(from) ?? 0) - (solution.voltsAt(to) ?? 0)) / 1e-6;
}

export function readingsOf(probe: Probe, scene: Imagined): readonly number[] {
  const { wiring, faults, world } = scene;
  const held = state(probe.state(wiring));
  return rigsWith(wiring, held, faults, world).map((rig) => {
    const network = without(standing(rig, held, wiring), probe.undone);
    const [from, to] = probe.between(wiring);
    if (probe.quantity === 'resistance') return ohmsBetween(network, [from, to]);
    const solution = solve(network);
    if (probe.quantity === 'current') return Math.abs(solution.ampsIn(from));
    return ((solution.voltsAt(from) ?? 0) - (solution.voltsAt(to) ?? 0)) / world.numbers('supply');
  });
}

export function binned(value: number, limits: readonly number[]): Odds {
  const spread = [1 - 2 * tolerance, 1 - tolerance, 1, 1 + tolerance, 1 + 2 * tolerance];
  return mixed(spread.map((factor) => [1 / spread.length, sure(bin(value * factor, limits))]));
}
