import type { Network, Node, UnitPosition } from '../../src/diagnose/circuit/network.ts';
import { aboveThreshold } from './netlist.ts';
import { type Solved, solvedByNgspice } from './run.ts';

/** V at the nodes of a network with everything its pins may leak drawn out of them, and with as much pushed in. */
export interface Leaned {
  readonly down: (node: Node) => number | undefined;
  readonly up: (node: Node) => number | undefined;
}

/** Networks in one run, and how often outputs may change their mind before they are said not to settle. */
const inOneRun = 24;
const attempts = 8;

/**
 * Solved by ngspice alone: outputs that a light or a supply controls are first let work, then held by what its own currents and
 * voltages say, until both agree. `unit`: where between surely off and surely on this board's parts stand.
 */
export function leaning(networks: readonly Network[], unit: UnitPosition): readonly Leaned[] {
  const solved: Solved[] = [];
  for (let from = 0; from < networks.length; from += inOneRun)
    solved.push(...settled(networks.slice(from, from + inOneRun), unit));
  return solved.map(({ low, high }) => ({ down: (node) => low.get(node), up: (node) => high.get(node) }));
}

const isPin = (node: Node): boolean => node === 'pin' || node.endsWith(' pin');

function settled(networks: readonly Network[], unit: UnitPosition): readonly Solved[] {
  const working = networks.map((network) => new Map(outputsOf(network).map((name) => [name, true])));
  const found: (Solved | undefined)[] = networks.map(() => undefined);
  let open = [...networks.keys()];
  for (let attempt = 0; open.length > 0; attempt++) {
    if (attempt === attempts) throw new Error('An output neither holds nor lets go.');
    const asks = open.map((at) => ({
      network: networks[at] ?? [],
      works: (name: string) => working[at]?.get(name) ?? true,
      shunted: isPin,
    }));
    const answers = solvedByNgspice(asks, 'leak');
    open = open.filter((at, i) => {
      const answer = answers[i];
      const held = working[at];
      if (!answer || !held) throw new Error('A network was lost on the way.');
      found[at] = answer;
      const now = outputsOf(networks[at] ?? []).map(
        (name) => [name, works(networks[at] ?? [], name, answer, unit)] as const,
      );
      const changed = now.filter(([name, works]) => held.get(name) !== works);
      for (const [name, works] of changed) held.set(name, works);
      return changed.length > 0;
    });
  }
  return found.flatMap((each) => (each ? [each] : []));
}

const outputsOf = (network: Network): readonly string[] =>
  network.flatMap((each) => (each.kind === 'switch' && each.when ? [each.name] : []));

function works(network: Network, name: string, { low, amps }: Solved, unit: UnitPosition): boolean {
  const output = network.find((each) => each.name === name);
  const when = output?.kind === 'switch' ? (output.when ?? []) : [];
  const volts = (node: Node) => low.get(node) ?? 0;
  return when.every((control) => aboveThreshold(control, volts, (part) => amps.get(part) ?? 0, unit) > 0);
}
