import type { CauseFacts } from '../../model/cause-facts.ts';
import type { DeclaredCircuit, Machine, Switch } from '../../model/machine.ts';
import { wiringOfSwitch } from '../circuit/select.ts';
import type { Wiring } from '../circuit/wiring.ts';

/** The wirings that a switch may have, and what of them nobody declared. */
export interface Candidates {
  readonly wirings: readonly [Wiring, ...Wiring[]];
  readonly assumed: CauseFacts['assumed'];
}

/**
 * One wiring where the file tells circuit and contact. Where it leaves the contact open, both kinds are thought of; where it tells no
 * circuit, the usual one of its sensor: for a plain contact one that joins a pulled-up terminal to 0 V (common practice, no source).
 */
export function candidatesOf(machine: Machine, of: Switch): Candidates {
  const isDeclared = of.circuit !== undefined && of.circuit.kind !== 'unknown';
  const circuit = isDeclared ? of.circuit : usualFor(of);
  const contacts =
    of.contact === 'unknown' ? (['normally closed', 'normally open'] as const) : ([of.contact] as const);
  const wirings = contacts.flatMap(
    (contact) => wiringOfSwitch(machine, { ...of, circuit, contact })?.wiring ?? [],
  );
  const [first, ...others] = wirings;
  if (!first) return candidatesOf(machine, { ...of, circuit: plain(of) });
  return {
    wirings: [first, ...others],
    assumed: [
      ...(isDeclared ? [] : (['circuit'] as const)),
      ...(of.contact === 'unknown' ? (['contact'] as const) : []),
    ],
  };
}

const kindFor = {
  npn: 'npn into pull-up',
  pnp: 'pnp into divider',
  'two-wire': 'two-wire into optocoupler',
  hall: 'hall module',
  optical: 'slotted optical module',
  contact: 'contact to ground',
  unknown: 'contact to ground',
} as const satisfies Record<Switch['sensor'], string>;

const plain = ({ voltage }: Switch): DeclaredCircuit => ({
  kind: 'contact to ground',
  supply: voltage.known === 'volts' ? voltage.volts : undefined,
  values: {},
});

const usualFor = (of: Switch): DeclaredCircuit => ({ ...plain(of), kind: kindFor[of.sensor] });
