import { ground, type Node, type Resistor } from './network.ts';
import type { Stamped } from './stamped.ts';

/** A network without the nodes on which only two resistances meet, and how to get their voltages back. */
export interface Shortened {
  readonly elements: readonly Stamped[];
  /** Voltages of the nodes left out, from those of the nodes kept. */
  readonly voltsAt: (node: Node, kept: (node: Node) => number) => number;
  /** The element of the shortened network whose current runs through a resistance that was joined to others. */
  readonly carrier: (name: string) => string;
}

interface Left {
  readonly one: Node;
  readonly other: Node;
  /** Share of the way from `one` to `other`. */
  readonly share: number;
}

/**
 * Plugs, cores and clamps follow each other without a branch: such chains are joined before solving, which leaves half the
 * unknowns, and divided again after. Nodes named in `wanted` stay.
 */
export function shortened(elements: readonly Stamped[], wanted: ReadonlySet<Node>): Shortened {
  const left = new Map<Node, Left>();
  const carriers = new Map<string, string>();
  const stay = new Set(elements);
  const at = new Map<Node, Stamped[]>();
  const join = (node: Node, element: Stamped) => {
    const there = at.get(node);
    if (there) there.push(element);
    else at.set(node, [element]);
  };
  const put = (element: Stamped) => {
    stay.add(element);
    join(element.from, element);
    if (element.to !== element.from) join(element.to, element);
  };
  /** A link that was taken has one end at a node that goes with it; at the other end it makes room. */
  const take = (element: Resistor, node: Node) => {
    stay.delete(element);
    const there = at.get(beyond(element, node));
    there?.splice(there.indexOf(element), 1);
  };
  for (const element of elements) put(element);
  for (const node of [...at.keys()]) {
    const [first, second, more] = at.get(node) ?? [];
    if (node === ground || wanted.has(node) || more !== undefined) continue;
    if (!isChainLink(first) || !isChainLink(second)) continue;
    const [one, other] = [beyond(first, node), beyond(second, node)];
    if (one === other || one === node || other === node) continue;
    const ohms = first.ohms + second.ohms;
    const joined: Resistor = {
      kind: 'resistor',
      name: `${first.name} + ${second.name}`,
      from: one,
      to: other,
      ohms,
    };
    left.set(node, { one, other, share: first.ohms / ohms });
    for (const each of [first, second]) {
      take(each, node);
      carriers.set(each.name, joined.name);
    }
    put(joined);
  }
  const voltsAt: Shortened['voltsAt'] = (node, kept) => {
    const found = left.get(node);
    if (found === undefined) return kept(node);
    const [one, other] = [voltsAt(found.one, kept), voltsAt(found.other, kept)];
    return one + found.share * (other - one);
  };
  const carrier = (name: string): string => {
    const next = carriers.get(name);
    return next === undefined ? name : carrier(next);
  };
  return { elements: [...stay], voltsAt, carrier };
}

const isChainLink = (element: Stamped | undefined): element is Resistor =>
  element?.kind === 'resistor' && element.ohms > 0;

const beyond = (element: Resistor, node: Node): Node => (element.from === node ? element.to : element.from);
