import { type Network, type Node, resistor } from '../circuit/network.ts';
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
/** A; what an ordinary meter sends through a resistance. */
const testAmps = 1e-4;

/** The reading of a proof with these faults, without tolerance of the meter; undefined where no meter is put. */
export function shownBy(proof: Proof, wiring: Wiring, faults: readonly Fault[]): Shown | undefined {
  if (proof.by === 'looking') return undefined;
  const world = nominalWorld(wiring);
  const rigs = faults.length === 0 ? [soundRig(wiring, world)] : rigsWith(wiring, proof.state, faults, world);
  return together(rigs.map((rig) => on(rig, proof, wiring)));
}

type Put = Exclude<Proof, { readonly by: 'looking' }>;

function on(rig: Rig, proof: Put, wiring: Wiring): Shown {
  if (proof.by === 'amps') return value(solve(standing(rig, proof.state, wiring)).ampsIn(proof.through));
  if (proof.by === 'volts') return volts(standing(rig, proof.state, wiring), proof.from, proof.to);
  return ohms(dead(undone(standing(rig, proof.state, wiring), proof.undone)), proof.from, proof.to);
}

function volts(network: Network, from: Node, to: Node): Shown {
  const bare = solve(network);
  const loaded = solve([...network, resistor('meter', from, to, meterOhms)]);
  const [plus, minus] = [loaded.voltsAt(from), loaded.voltsAt(to)];
  if (plus === undefined || minus === undefined) return { kind: 'wanders' };
  const behind = [from, to].map((node) => bare.sourceOhms(node) ?? Number.POSITIVE_INFINITY);
  return Math.max(...behind) > wandersAbove ? { kind: 'wanders' } : value(plus - minus);
}

function ohms(network: Network, from: Node, to: Node): Shown {
  const probed: Network = [
    ...network,
    resistor('meter', from, to, 1e12),
    // The black lead is the reference, wherever the rest of the network hangs.
    resistor('black lead', to, '0 V', 1e-3),
    { kind: 'current', name: 'test', from: '0 V', to: from, amps: testAmps },
  ];
  const [plus, minus] = [solve(probed).voltsAt(from), solve(probed).voltsAt(to)];
  if (plus === undefined || minus === undefined) return { kind: 'over range' };
  const found = (plus - minus) / testAmps;
  return found > overRange ? { kind: 'over range' } : value(found);
}

/** With power off a supply is nothing that holds a voltage. */
const dead = (network: Network): Network =>
  network.filter(({ kind }) => kind !== 'voltage' && kind !== 'current');

const ends = {
  'at controller': ['plug'],
  'at switch': ['clamp'],
  'both ends': ['plug', 'clamp'],
  nothing: [],
} as const;

function undone(network: Network, which: Extract<Put, { by: 'ohms' }>['undone']): Network {
  const names = ends[which].flatMap((end) => ['signal', 'common', 'supply'].map((core) => `${core} ${end}`));
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
