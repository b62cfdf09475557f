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
  const at = new Map<Node, Set<Stamped>>();
  const put = (element: Stamped) => {
    for (const node of [element.from, element.to]) at.set(node, (at.get(node) ?? new Set()).add(element));
  };
  const take = (element: Stamped) => {
    for (const node of [element.from, element.to]) at.get(node)?.delete(element);
  };
  for (const element of elements) put(element);
  const left = new Map<Node, Left>();
  const carriers = new Map<string, string>();
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
      take(each);
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
  return { elements: [...new Set([...at.values()].flatMap((set) => [...set]))], voltsAt, carrier };
}

const isChainLink = (element: Stamped | undefined): element is Resistor =>
  element?.kind === 'resistor' && element.ohms > 0;

const beyond = (element: Resistor, node: Node): Node => (element.from === node ? element.to : element.from);
