import { type Element, ground, type Node, resistor } from '../../../../src/diagnose/circuit/network.ts';
import { neighbourOf, soundRig, withNeighbour } from '../../../../src/diagnose/circuit/rig.ts';
import type { State } from '../../../../src/diagnose/circuit/state.ts';
import type { Machine } from './machine.ts';

/** The input at one moment. Faults change it before the person's doings are put on top. */
export interface Input {
  parts: Element[];
  /** Whether what is worked, by hand or by the machine, works the contact now. */
  worked: boolean;
  /** Whether the contact conducts, once it is known whether it is worked. */
  conducts: (worked: boolean) => boolean;
  inverted: boolean;
  enabled: boolean;
  filterMs: number;
  stuck: 'no' | 'open' | 'conducting';
}

/** As built, with the channel beside it where that matters. */
export function soundInput({ wiring, board, unit }: Machine, state: State, beside: boolean): Input {
  const rig = soundRig(wiring, board);
  const { network } = beside ? withNeighbour(rig, wiring, board) : rig;
  return {
    parts: [...network],
    worked: ['pressed by hand', 'pressed by machine', 'tapped'].includes(state.actuation),
    conducts: (worked) => worked === (wiring.contact === 'normally open'),
    inverted: false,
    enabled: true,
    filterMs: unit.filterMs,
    stuck: 'no',
  };
}

const cores = ['signal', 'common', 'supply'] as const;
const ends = { 'out at controller': 'plug', 'out at switch': 'clamp' } as const;

/** Contacts where they stand, what is unplugged taken out, what is linked put in: the netlist as it is now. */
export function netlistOf(input: Input, state: State, { wiring }: Machine): readonly Element[] {
  const normallyClosed = wiring.contact === 'normally closed';
  const closed = input.conducts(input.worked);
  const out = state.plug === 'in' ? undefined : ends[state.plug];
  const kept = input.parts
    .filter(({ name }) => out === undefined || !cores.some((core) => name === `${core} ${out}`))
    .map((part): Element => {
      if (part.kind !== 'switch') return part;
      if (part.name === 'contact') return { ...part, closed };
      if (part.name === neighbourOf('contact'))
        return { ...part, closed: (state.neighbour === 'pressed') !== normallyClosed };
      return /contact \d$/.test(part.name) ? { ...part, closed: normallyClosed } : part;
    });
  if (state.link === 'none') return kept;
  const [from, to] = wiring.template.link[state.link === 'at switch' ? 'switch' : 'controller'];
  return [...kept, resistor('link', from, to, 0.1)];
}

/** Changes of a netlist that faults are made of. */
export const remove = (input: Input, ...names: readonly string[]): void => {
  input.parts = input.parts.filter(({ name }) => !names.includes(name));
};
export const add = (input: Input, ...parts: readonly Element[]): void => {
  input.parts = [...input.parts, ...parts];
};
export const bridge = (input: Input, from: Node, to: Node, ohms: number): void =>
  add(input, resistor('bridge', from, to, ohms));
export const alter = (input: Input, name: string, change: (part: Element) => Element): void => {
  input.parts = input.parts.map((part) => (part.name === name ? change(part) : part));
};
export const setOhms = (input: Input, name: string, ohms: number): void =>
  alter(input, name, (part) => {
    if (part.kind === 'switch') return { ...part, closedOhms: ohms };
    return part.kind === 'resistor' ? { ...part, ohms } : part;
  });
export const setVolts = (input: Input, name: string, volts: number): void =>
  alter(input, name, (part) => (part.kind === 'voltage' ? { ...part, volts } : part));
export const setFarads = (input: Input, farads: number): void =>
  alter(input, 'filter', (part) => (part.kind === 'capacitor' ? { ...part, farads } : part));
export const turnRound = (input: Input, name: string): void =>
  alter(input, name, (part) => ({ ...part, from: part.to, to: part.from }));
/** So many volts behind 100 kohm onto the signal core. */
export const couple = (input: Input, volts: number): void =>
  add(
    input,
    { kind: 'voltage', name: 'disturbance', from: 'disturbance', to: ground, volts },
    resistor('coupling', 'disturbance', 'cable signal', 100e3),
  );
