import { type Network, type Node, resistor } from '../../../../src/diagnose/circuit/network.ts';
import { neighbourOf } from '../../../../src/diagnose/circuit/rig.ts';
import type { State } from '../../../../src/diagnose/circuit/state.ts';
import { chanceFor } from './draws.ts';
import { type Input, netlistOf, soundInput } from './input.ts';
import type { Machine } from './machine.ts';
import { type Metered, metered } from './metered.ts';
import { troubleOf } from './troubles.ts';

/** The input looked at for a while in one state: by the controller, by the sensor's own lamp, or with a meter put on. */
export interface Look {
  readonly name: string;
  readonly state: State;
  readonly meter?: Metered;
}

/** What has to be solved for a look. */
export interface Question {
  readonly machine: Machine;
  readonly networks: readonly Network[];
  /** Nodes whose voltage is wanted, and pins whose source resistance is wanted beside. */
  readonly volts: readonly Node[];
  readonly pins: readonly Node[];
}

/** For each network the volts, then the ohms. */
export type Answer = readonly (readonly number[])[];

/** What comes and goes is caught in one way or another at each of so many moments of a look. */
export const moments = 6;

const lampNodes: readonly Node[] = ['device supply', 'device common', 'cable signal', 'switch signal'];

export interface Posed {
  readonly question: Question;
  readonly inputs: readonly Input[];
  /** Which network each moment shows. */
  readonly at: readonly number[];
}

/** Everything about a look follows from the machine and the look's name alone, whenever it is taken. */
export function posed(machine: Machine, { name, state, meter }: Look): Posed {
  const besideMatters = machine.faults.some((fault) => troubleOf(fault).beside);
  const now = chanceFor(machine.seed, 'look', name);
  const inputs = Array.from({ length: moments }, () => {
    const input = soundInput(machine, state, besideMatters);
    for (const fault of machine.faults)
      troubleOf(fault).plays?.(input, {
        machine,
        state,
        lasting: chanceFor(machine.seed, 'fault', fault),
        now,
      });
    return input;
  });
  const all = inputs.map((input) => {
    const netlist = netlistOf(input, state, machine);
    return meter ? metered(netlist, meter) : netlist;
  });
  const texts = all.map((network) =>
    JSON.stringify(network, (_, value) => (value === Infinity ? 'no' : value)),
  );
  const distinct = [...new Set(texts)];
  const pins = meter ? [] : besideMatters ? ['pin', neighbourOf('pin')] : ['pin'];
  const question: Question = {
    machine,
    networks: distinct.map((text) => tied(all[texts.indexOf(text)] ?? [])),
    volts: meter ? [meter.from, meter.to] : [...pins, ...lampNodes],
    pins,
  };
  return { question, inputs, at: texts.map((text) => distinct.indexOf(text)) };
}

export const questionOf = (machine: Machine, look: Look): Question => posed(machine, look).question;

/** Time passes between deeds, and before one is done once more: what comes and goes is caught anew in each. */
export const lookedAt = (deed: string, look: Look, isAgain: boolean): Look => ({
  ...look,
  name: `${deed}${isAgain ? ' again' : ''}: ${look.name}`,
});

/** Ohm; a board's own surface, so that nothing hangs in nowhere. */
const surfaceOhms = 1e9;

const tied = (network: Network): Network => [
  ...network,
  ...[...new Set(network.flatMap(({ from, to }) => [from, to]))]
    .filter((node) => node !== '0 V')
    .map((node) => resistor(`surface ${node}`, node, '0 V', surfaceOhms)),
];
