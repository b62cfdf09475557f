import { bins } from '../../model/every-outcome.ts';
import type { Bin } from '../../model/outcomes.ts';
import type { Network, Node } from '../circuit/network.ts';
import { standing } from '../circuit/rig.ts';
import { solve } from '../circuit/solve.ts';
import { type State, state } from '../circuit/state.ts';
import type { Wiring } from '../circuit/wiring.ts';
import { type End, ohmsBetween, undone, voltsBetween } from '../fault-finding/meter.ts';
import { rigsWith } from '../fault-finding/reading-of.ts';
import type { Imagined } from './imagined.ts';
import { memoryOf } from './memory.ts';
import { mixed, type Odds, sure } from './odds.ts';

export type Quantity = 'resistance' | 'voltage' | 'current';

/** A meter put somewhere. Resistance: power off and both ends of the cable undone, or the switch alone. */
export interface Probe {
  readonly quantity: Quantity;
  /** Nodes of the network; for a current, the element it is let flow through. */
  readonly between: (wiring: Wiring) => readonly [Node, Node];
  readonly undone: readonly End[];
  readonly state: (wiring: Wiring) => Partial<State>;
  /** Where the bins divide, ascending: ohm, share of the supply, or A. */
  readonly limits: readonly number[];
}

/** What a meter may be off by: 2 % of the reading (common practice for a hand-held meter, no source). */
const tolerance = 0.02;

/** "bin 0" below the first limit. Nobody needs to read the figure out: the tool bins it. */
export const bin = (value: number, limits: readonly number[]): Bin =>
  bins[limits.filter((limit) => value >= limit).length] ?? 'bin 4';

/** Figures for each way the input may stand, each as likely: ohm, share of the supply, or A. */
export function readingsOf(probe: Probe, { wiring, faults, world }: Imagined): readonly number[] {
  const held = state(probe.state(wiring));
  const supply = world.numbers('supply');
  return rigsWith(wiring, held, faults, world).flatMap((rig) =>
    figuresOf(probe, wiring, undone(standing(rig, held, wiring), probe.undone)).map((figure) =>
      probe.quantity === 'voltage' ? figure / supply : figure,
    ),
  );
}

/** Ohm, V or A. */
function figuresOf({ quantity, between }: Probe, wiring: Wiring, network: Network): readonly number[] {
  const [from, to] = between(wiring);
  const figure = (what: string, of: Network, read: () => number): number =>
    memoryOf(wiring).figure(`${what} ${from} ${to}`, of, read);
  switch (quantity) {
    case 'resistance':
      return [network, withoutJunctions(network)].map((each) =>
        figure('ohms', each, () => ohmsBetween(each, from, to)),
      );
    case 'voltage':
      // What next to nothing holds, one meter pulls down and another does not.
      return [true, false].map((isHeld) =>
        figure(isHeld ? 'volts' : 'volts, if held', network, () => {
          const { volts, steady } = voltsBetween(network, from, to);
          return steady || isHeld ? volts : 0;
        }),
      );
    case 'current':
      return [figure('amps', network, () => Math.abs(solve(network).ampsIn(from)))];
  }
}

/** One ohmmeter makes a junction conduct, another has too little voltage for that: either is thought of. */
const withoutJunctions = (network: Network): Network => network.filter(({ kind }) => kind !== 'diode');

export function binned(value: number, limits: readonly number[]): Odds<Bin> {
  const spread = [1 - 2 * tolerance, 1 - tolerance, 1, 1 + tolerance, 1 + 2 * tolerance];
  return mixed(spread.map((factor) => [1 / spread.length, sure(bin(value * factor, limits))]));
}
