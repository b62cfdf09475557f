import { ground, type Network, type Node, resistor } from '../circuit/network.ts';
import { type Rig, soundRig, standing } from '../circuit/rig.ts';
import { solve } from '../circuit/solve.ts';
import { nominalWorld, type Wiring } from '../circuit/wiring.ts';
import type { Fault, Proof } from './fault.ts';
import { rigsWith } from './reading-of.ts';

/** What a meter shows: steady or jumping between two values; nothing to hold it; beyond its range. */
export type Shown =
  | { readonly kind: 'value'; readonly least: number; readonly most: number }
  | { readonly kind: 'wanders' }
  | { readonly kind: 'over range' };

/** An ordinary meter loads what it measures with 10 Mohm, and shows no resistance above 40 Mohm (common practice, no source). */
const meterOhms = 10e6;
const overRange = 40e6;
/** Above this source resistance a hand near the wire moves the needle, ohm (common practice, no source). */
const wandersAbove = 1e6;
/** A; on high ranges a meter sends a microampere, and then no junction beside the resistance conducts (common practice, no source). */
const testAmps = 1e-6;

/** The reading of a proof with these faults, without tolerance of the meter; undefined where no meter is put. */
export function shownBy(proof: Proof, wiring: Wiring, faults: readonly Fault[]): Shown | undefined {
  if (proof.by === 'looking') return undefined;
  const world = nominalWorld(wiring);
  const rigs = faults.length === 0 ? [soundRig(wiring, world)] : rigsWith(wiring, proof.state, faults, world);
  return together(rigs.map((rig) => on(rig, proof, wiring)));
}

type Put = Exclude<Proof, { readonly by: 'looking' }>;

function on(rig: Rig, proof: Put, wiring: Wiring): Shown {
  const network = standing(rig, proof.state, wiring);
  if (proof.by === 'amps') return value(solve(network).ampsIn(proof.through));
  if (proof.by === 'volts') {
    const { volts, steady } = voltsBetween(network, proof.from, proof.to);
    return steady ? value(volts) : { kind: 'wanders' };
  }
  const ohms = ohmsBetween(undone(network, ends[proof.undone]), proof.from, proof.to);
  return ohms === Number.POSITIVE_INFINITY ? { kind: 'over range' } : value(ohms);
}

/** What a voltmeter shows between two nodes; not steady where nothing, or next to nothing, holds one of them. */
export function voltsBetween(
  network: Network,
  from: Node,
  to: Node,
): { readonly volts: number; readonly steady: boolean } {
  const bare = solve(network);
  const loaded = solve([...network, resistor('meter', from, to, meterOhms)]);
  const [plus, minus] = [loaded.voltsAt(from), loaded.voltsAt(to)];
  if (plus === undefined || minus === undefined) return { volts: 0, steady: false };
  const behind = [from, to].map((node) => bare.sourceOhms(node) ?? Number.POSITIVE_INFINITY);
  return { volts: plus - minus, steady: Math.max(...behind) <= wandersAbove };
}

/** What an ohmmeter shows between two nodes with power off; infinite beyond its range. */
export function ohmsBetween(network: Network, from: Node, to: Node): number {
  // The black lead is the reference; what the network calls 0 V hangs on it only where the network joins them.
  const named = (node: Node): Node => (node === to ? ground : node === ground ? 'left alone' : node);
  const solution = solve([
    ...dead(network).map((each) => ({ ...each, from: named(each.from), to: named(each.to) })),
    resistor('meter', named(from), ground, 1e12),
    { kind: 'current', name: 'test', from: ground, to: named(from), amps: testAmps },
  ]);
  const volts = solution.voltsAt(named(from));
  if (volts === undefined) return Number.POSITIVE_INFINITY;
  const found = volts / testAmps;
  return found > overRange ? Number.POSITIVE_INFINITY : found;
}

/** With power off a supply is nothing that holds a voltage. */
const dead = (network: Network): Network =>
  network.filter(({ kind }) => kind !== 'voltage' && kind !== 'current');

/** Which end of the cable is undone: the plug at the controller, the clamps at the switch. */
export type End = 'controller' | 'switch';

const ends: Readonly<Record<Extract<Put, { by: 'ohms' }>['undone'], readonly End[]>> = {
  'at controller': ['controller'],
  'at switch': ['switch'],
  'both ends': ['controller', 'switch'],
  nothing: [],
};

export function undone(network: Network, at: readonly End[]): Network {
  const names = at.flatMap((end) =>
    ['signal', 'common', 'supply'].map((core) => `${core} ${end === 'controller' ? 'plug' : 'clamp'}`),
  );
  return network.filter(({ name }) => !names.includes(name));
}

const value = (found: number): Shown => ({ kind: 'value', least: found, most: found });

/** What jumps between a value and nothing is told by the value and by that it wanders. */
function together(shown: readonly Shown[]): Shown {
  const values = shown.filter((each) => each.kind === 'value');
  const [first = value(Number.NaN)] = shown;
  if (values.length === 0) return first;
  if (values.length < shown.length) return { kind: 'wanders' };
  return {
    kind: 'value',
    least: Math.min(...values.map(({ least }) => least)),
    most: Math.max(...values.map(({ most }) => most)),
  };
}
