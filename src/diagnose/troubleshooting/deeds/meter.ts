import { type Network, type Node, resistor } from '../../circuit/network.ts';
import { standing } from '../../circuit/rig.ts';
import { solve } from '../../circuit/solve.ts';
import { type State, state } from '../../circuit/state.ts';
import type { Wiring } from '../../circuit/wiring.ts';
import { rigsWith } from '../../fault-finding/reading-of.ts';
import {
  coupler,
  dryContact,
  either,
  everywhere,
  module,
  pulled,
  type Trait,
  threeWire,
  twoWire,
} from '../../fault-finding/traits.ts';
import type { Imagined } from '../imagined.ts';
import { mixed, type Odds, sure } from '../odds.ts';

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

/** A milliampere sent through and the voltage it makes; above 20 Mohm a meter says over range. */
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

function binned(value: number, limits: readonly number[]): Odds {
  const spread = [1 - 2 * tolerance, 1 - tolerance, 1, 1 + tolerance, 1 + 2 * tolerance];
  return mixed(spread.map((factor) => [1 / spread.length, sure(bin(value * factor, limits))]));
}

const meter = <Name extends string>(name: Name, minutes: number, applies: Trait, probe: Probe) =>
  ({
    name,
    kind: 'meter',
    minutes,
    mistaken: 0.02,
    applies,
    probe,
    odds: (scene: Imagined): Odds => {
      const values = readingsOf(probe, scene);
      return mixed(values.map((value) => [1 / values.length, binned(value, probe.limits)]));
    },
  }) as const;

/** Ohm: a good joint is below 10, a leak lies between, what is apart shows more than 1 Mohm. */
const ohmLimits = [10, 1e6] as const;
const shareLimits = [-0.2, 0.15, 0.5, 0.85] as const;
const closedWhen = ({ contact }: Wiring): Partial<State> =>
  contact === 'normally open' ? { actuation: 'pressed by hand' } : {};
const openWhen = ({ contact }: Wiring): Partial<State> =>
  contact === 'normally open' ? {} : { actuation: 'pressed by hand' };
const bothEnds = ['controller', 'switch'] as const;
const atRest = () => ({});

export const signalCoreOhms = meter('ohms-signal-core', 5, everywhere, {
  quantity: 'resistance',
  between: () => ['cable signal', 'switch signal'],
  undone: bothEnds,
  state: atRest,
  limits: ohmLimits,
});
export const commonCoreOhms = meter('ohms-common-core', 5, everywhere, {
  quantity: 'resistance',
  between: () => ['cable common', 'switch common'],
  undone: bothEnds,
  state: atRest,
  limits: ohmLimits,
});
export const signalToReturn = meter('ohms-signal-to-return', 5, everywhere, {
  quantity: 'resistance',
  between: () => ['cable signal', '0 V'],
  undone: bothEnds,
  state: atRest,
  limits: ohmLimits,
});
export const signalToPlus = meter('ohms-signal-to-plus', 5, everywhere, {
  quantity: 'resistance',
  between: ({ template }) => ['cable signal', template.plus],
  undone: bothEnds,
  state: atRest,
  limits: ohmLimits,
});
export const contactClosed = meter('ohms-contact-closed', 5, dryContact, {
  quantity: 'resistance',
  between: () => ['device signal', 'device common'],
  undone: ['switch'],
  state: closedWhen,
  limits: ohmLimits,
});
export const contactOpen = meter('ohms-contact-open', 5, dryContact, {
  quantity: 'resistance',
  between: () => ['device signal', 'device common'],
  undone: ['switch'],
  state: openWhen,
  limits: ohmLimits,
});
export const pullOhms = meter('ohms-pull', 5, pulled, {
  quantity: 'resistance',
  between: ({ template }) => ['terminal', template.joins === '0 V' ? 'logic +' : '0 V'],
  undone: ['controller'],
  state: atRest,
  limits: [10, 25e3, 1e6],
});
export const terminalClosed = meter('volts-terminal-closed', 3, everywhere, {
  quantity: 'voltage',
  between: () => ['terminal', '0 V'],
  undone: [],
  state: closedWhen,
  limits: shareLimits,
});
export const terminalOpen = meter('volts-terminal-open', 3, everywhere, {
  quantity: 'voltage',
  between: () => ['terminal', '0 V'],
  undone: [],
  state: openWhen,
  limits: shareLimits,
});
export const sensorSupply = meter('volts-sensor-supply', 3, either(threeWire, module), {
  quantity: 'voltage',
  between: () => ['device supply', 'device common'],
  undone: [],
  state: atRest,
  limits: [-0.2, 0.15, 0.6, 1.3],
});
export const sensorOutput = meter('volts-sensor-output', 3, either(threeWire, twoWire), {
  quantity: 'voltage',
  between: () => ['device signal', 'device common'],
  undone: [],
  state: closedWhen,
  limits: shareLimits,
});
export const returnsApart = meter('ohms-returns', 5, either(pulled, threeWire), {
  quantity: 'resistance',
  between: () => ['field 0 V', '0 V'],
  undone: ['controller'],
  state: atRest,
  limits: ohmLimits,
});
export const couplerCommon = meter('volts-coupler-common', 3, coupler, {
  quantity: 'voltage',
  between: () => ['coupler common', 'field 0 V'],
  undone: [],
  state: atRest,
  limits: shareLimits,
});
export const loopClosed = meter('amps-closed', 5, coupler, {
  quantity: 'current',
  between: () => ['signal plug', 'signal plug'],
  undone: [],
  state: closedWhen,
  limits: [2e-4, 2e-3, 2e-2],
});
export const loopOpen = meter('amps-open', 5, coupler, {
  quantity: 'current',
  between: () => ['signal plug', 'signal plug'],
  undone: [],
  state: openWhen,
  limits: [2e-4, 1e-3, 2e-3],
});
