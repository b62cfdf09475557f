import type { BenchOptions } from '../../src/bench/bench.ts';
import type { CircuitTruth, Moment, Reads } from '../../src/bench/circuit-truth.ts';
import type { InputTruth } from '../../src/bench/truth.ts';
import { circuitNamed } from '../../src/diagnose/circuit/registry.ts';
import { wiringOf } from '../../src/diagnose/circuit/wiring.ts';
import { faultsOf } from '../../src/diagnose/fault-finding/registry.ts';
import type { FaultName } from '../../src/model/fault-names.ts';
import { committedTable, type WiringVolts } from '../ngspice/circuit-table.ts';
import type { PinVolts } from '../ngspice/pin-volts.ts';
import { howPlayed, type NeededToShow } from './how-played.ts';

/** One board, one wiring, what is wrong with it, as a machine of the bench with one input (two, where a fault reaches the one beside). */
export interface CircuitMachine {
  readonly named: string;
  readonly wiring: WiringVolts;
  readonly faults: readonly FaultName[];
  readonly bench: BenchOptions;
  /** The same board without a fault. */
  readonly sound: BenchOptions;
  /** Where hands and plugs cannot bring it out. */
  readonly shows?: NeededToShow;
}

export const ownInput = 'x-home';
export const otherInput = 'y-home';

/** Jumps by itself, or hangs in the air in some state: what is seen of it is never twice the same. */
export const comesAndGoes = ({ truth }: BenchOptions): boolean =>
  truth?.inputs.some(
    ({ circuit }) => circuit && (circuit.moments.length > 1 || circuit.moments.flat(2).includes(null)),
  ) ?? false;

/** Two faults that hide each other at every press: the other blade, and the setting made to fit it. */
const together: readonly (readonly FaultName[])[] = [['wrong-blade', 'polarity-inverted']];

/** Every wiring with each fault that can happen to it, on every kind of board that would read it otherwise. */
export function circuitMachines(contact: WiringVolts['contact']): readonly CircuitMachine[] {
  return committedTable()
    .filter((each) => each.contact === contact)
    .flatMap((wiring) => {
      const names = faultsOf(wiringOf(circuitNamed(wiring.wiring), { contact })).map(({ name }) => name);
      const some = [
        ...names.map((name) => [name]),
        ...together.filter((each) => each.every((name) => names.includes(name))),
      ];
      return some.flatMap((faults) => machinesOf(wiring, faults));
    });
}

function machinesOf(wiring: WiringVolts, faults: readonly FaultName[]): readonly CircuitMachine[] {
  const spread = faults.map((name) => wiring.faults[name]).find((each) => each !== undefined) ?? wiring.sound;
  const needed = faults.map((name) => howPlayed[name]).find((each) => each.by === 'nothing here');
  return spread.flatMap((volts, end) =>
    boards(wiring.reads, volts).map((reads): CircuitMachine => {
      const soundVolts = wiring.sound[end] ?? wiring.sound[0];
      return {
        named: `${wiring.wiring}, ${wiring.contact}: ${faults.join(' and ')}`,
        wiring,
        faults,
        bench: benchOf(wiring, reads, volts, faults),
        sound: benchOf(wiring, reads, soundVolts, []),
        ...(needed?.by === 'nothing here' && { shows: needed.shows }),
      };
    }),
  );
}

/** Where a pin stands between the thresholds, one board reads it low, another high, and one with hysteresis as it was before. */
function boards(reads: Reads, { own, beside = [] }: PinVolts): readonly Reads[] {
  if (reads.kind === 'band') return [reads];
  const { falls, rises } = reads;
  const between = [...own, ...beside].flat(2).some((each) => each !== null && each > falls && each < rises);
  return between ? [reads, { ...reads, rises: falls + 1e-9 }, { ...reads, falls: rises - 1e-9 }] : [reads];
}

function benchOf(
  { contact }: WiringVolts,
  reads: Reads,
  volts: PinVolts,
  faults: readonly FaultName[],
): BenchOptions {
  const played = faults.map((name) => howPlayed[name]);
  const own = moments(volts.own);
  const plants = played.flatMap((each) => {
    if (each.by === 'plant') return [`${each.plant}:${ownInput}`];
    if (each.by === 'unmoved')
      return [`${contact === 'normally closed' ? 'welded' : 'never-makes'}:${ownInput}`];
    return [];
  });
  const dead = played.find((each) => each.by === 'dead pin');
  const filter = played.find((each) => each.by === 'filter');
  const closed = reads.open === 'H' ? 'L' : 'H';
  const circuit: CircuitTruth = {
    reads,
    moments: played.some(({ by }) => by === 'blinking') ? [own[0], asWorked(own[0], contact)] : own,
    ...(dead && { dead: dead.conducting ? closed : reads.open }),
    ...(volts.beside && { beside: otherInput }),
  };
  const mine = input(ownInput, contact, { circuit, ...(filter && { filter: filter.ms }) });
  const others = volts.beside
    ? [input(otherInput, contact, { circuit: { reads, moments: moments(volts.beside), beside: ownInput } })]
    : [];
  return {
    truth: { inputs: [mine, ...others], axes: [] },
    faults: plants,
    telling: { rate: 25, positions: false },
  };
}

const moments = ([first, ...more]: readonly Moment[]): CircuitTruth['moments'] => [first ?? [], ...more];

/** As its row is with the contact the other way: what lies before the eye does what a flag would. */
const asWorked = (moment: Moment, contact: WiringVolts['contact']): Moment =>
  moment.map((_, row) => moment[contact === 'normally closed' ? row | 1 : row & ~1] ?? []);

function input(
  name: string,
  contact: WiringVolts['contact'],
  more: Pick<InputTruth, 'circuit' | 'filter'>,
): InputTruth {
  return {
    name,
    connector: name,
    joined: 'single',
    setting: contact === 'normally closed' ? 'active when open' : 'active when closed',
    limit: false,
    switches: [{ subject: name, contact, stop: false }],
    ...more,
  };
}
