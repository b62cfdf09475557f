import { ground, type Network, type Node, nodesOf, resistor } from '../../src/diagnose/circuit/network.ts';
import { circuits } from '../../src/diagnose/circuit/registry.ts';
import { standing } from '../../src/diagnose/circuit/rig.ts';
import { looks, type State, state } from '../../src/diagnose/circuit/state.ts';
import { nominalWorld, type Wiring, wiringOf } from '../../src/diagnose/circuit/wiring.ts';
import type { Fault } from '../../src/diagnose/fault-finding/fault.ts';
import { rigsWith } from '../../src/diagnose/fault-finding/reading-of.ts';
import { faultsOf } from '../../src/diagnose/fault-finding/registry.ts';

/** Every state in which a rig can be looked at, disturbances and handling among them. */
const states: readonly State[] = [
  ...Object.values(looks),
  state({ running: 'drives' }),
  state({ running: 'spindle' }),
  state({ running: 'axis' }),
  state({ handling: 'tugged' }),
  state({ handling: 'cable flexed' }),
  state({ neighbour: 'pressed' }),
];

export interface Case {
  readonly named: string;
  readonly network: Network;
}

/** All circuits with all their faults, one at a time, in all states; networks that are the same stand once. */
export function allNetworks(): readonly Case[] {
  const cases = new Map<string, Case>();
  for (const circuit of circuits) {
    for (const contact of ['normally open', 'normally closed'] as const) {
      const wiring = wiringOf(circuit, { contact });
      for (const fault of [undefined, ...faultsOf(wiring)])
        for (const each of casesOf(wiring, fault)) cases.set(JSON.stringify(each.network), each);
    }
  }
  return [...cases.values()];
}

function casesOf(wiring: Wiring, fault: Fault | undefined): readonly Case[] {
  const world = nominalWorld(wiring);
  return states.flatMap((at) =>
    rigsWith(wiring, at, fault ? [fault] : [], world).map((rig) => ({
      named: `${wiring.circuit.name}, ${wiring.contact}, ${fault?.name ?? 'sound'}, ${JSON.stringify(at)}`,
      network: tiedDown(standing(rig, at, wiring)),
    })),
  );
}

/** Ohm; as good as nothing, and enough for both solvers to agree where a node is. */
const tieOhms = 1e10;

/**
 * A node that only a blocking junction holds stands where rounding puts it, in either solver. Both are given the same weak tie to
 * ground there. Nodes that nothing holds at all stay as they are.
 */
function tiedDown(network: Network): Network {
  const solid = reached(network, (each) => isPart(each) && each.kind !== 'diode');
  const held = reached(network, isPart);
  const hanging = nodesOf(network).filter((node) => held.has(node) && !solid.has(node));
  return [...network, ...hanging.map((node) => resistor(`tie ${node}`, node, ground, tieOhms))];
}

/** Something between its nodes: not a part left out, nor one that only pushes or only stores. */
const isPart = (each: Network[number]): boolean =>
  each.kind !== 'capacitor' &&
  each.kind !== 'current' &&
  (each.kind !== 'resistor' || Number.isFinite(each.ohms));

function reached(network: Network, leads: (element: Network[number]) => boolean): ReadonlySet<Node> {
  const found = new Set<Node>([ground]);
  for (let before = 0; before < found.size; ) {
    before = found.size;
    for (const each of network.filter(leads))
      for (const [one, other] of [
        [each.from, each.to],
        [each.to, each.from],
      ] as const)
        if (found.has(one)) found.add(other);
  }
  return found;
}

/** Nodes beside a junction: their voltage follows the logarithm of a current. */
export const isAtJunction = (network: Network, node: string): boolean =>
  network.some((each) => each.kind === 'diode' && (each.from === node || each.to === node));
