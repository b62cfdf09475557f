import { type Element, ground, type Network, type Node } from './network.ts';

/**
 * The nodes that some path of resistance, source or junction ties to ground. The rest float: their voltage is no property of the
 * network. A current source ties nothing: it pushes, it does not hold.
 */
export function heldNodes(network: Network): ReadonlySet<Node> {
  const neighbours = new Map<Node, Node[]>();
  const join = (one: Node, other: Node) => {
    const list = neighbours.get(one);
    if (list) list.push(other);
    else neighbours.set(one, [other]);
  };
  for (const element of network) {
    if (!holds(element)) continue;
    join(element.from, element.to);
    join(element.to, element.from);
  }
  const held = new Set<Node>([ground]);
  const queue: Node[] = [ground];
  for (let node = queue.pop(); node !== undefined; node = queue.pop()) {
    for (const next of neighbours.get(node) ?? []) {
      if (held.has(next)) continue;
      held.add(next);
      queue.push(next);
    }
  }
  return held;
}

function holds(element: Element): boolean {
  switch (element.kind) {
    case 'resistor':
      return Number.isFinite(element.ohms);
    case 'switch':
      return Number.isFinite(element.closed ? element.closedOhms : element.openOhms);
    case 'voltage':
    case 'diode':
      return true;
    case 'current':
    case 'capacitor':
      return false;
  }
}
