import { ground, type Network, type Node, nodesOf } from '../../src/diagnose/circuit/network.ts';
import { type Solution, solve } from '../../src/diagnose/circuit/solve.ts';
import { aboveThreshold } from './netlist.ts';
import { type Case, isAtJunction } from './networks.ts';
import { type Ask, type Solved, solvedByNgspice } from './run.ts';

/** What two solvers say of the same networks. */
export interface Agreement {
  readonly networks: number;
  readonly nodes: number;
  readonly floating: number;
  readonly apart: readonly string[];
}

/** Networks in one run: one after the other costs more in starting than in solving. */
const inOneRun = 16;
/** V; a node that moves so far with the far end of its shunt is held by nothing, one that moves less is held. */
const follows = 5;
/** 1 mV or 0.1 %; 5 mV beside a junction. */
const allowed = (volts: number, atJunction: boolean): number =>
  Math.max(atJunction ? 5e-3 : 1e-3, 1e-3 * Math.abs(volts));

/** Compares node by node. `bent` changes what our solver sees: the comparison must notice. */
export function agreement(
  cases: readonly Case[],
  bent: (network: Network) => Network = (same) => same,
): Agreement {
  const found: Agreement[] = [];
  for (let from = 0; from < cases.length; from += inOneRun)
    found.push(compared(cases.slice(from, from + inOneRun), bent));
  const sum = (of: (each: Agreement) => number) => found.reduce((all, each) => all + of(each), 0);
  return {
    networks: cases.length,
    nodes: sum(({ nodes }) => nodes),
    floating: sum(({ floating }) => floating),
    apart: found.flatMap(({ apart }) => apart),
  };
}

function compared(cases: readonly Case[], bent: (network: Network) => Network): Agreement {
  const ours = cases.map(({ network }) => solve(bent(network)));
  const asks = cases.map(({ network }, at): Ask => {
    const works = (name: string) => holds(network, name, oursOf(ours[at]));
    return { network, works, shunted: () => true };
  });
  const loose = solvedByNgspice(asks, 'find').map(looseNodes);
  const solved = solvedByNgspice(
    asks.map((ask, at) => ({ ...ask, shunted: (node) => loose[at]?.has(node) ?? false })),
    'solve',
  );
  const apart: string[] = [];
  let [nodes, floating] = [0, 0];
  for (const [at, { named, network }] of cases.entries()) {
    const [mine, their, ask] = [ours[at], solved[at], asks[at]];
    if (!mine || !their || !ask) throw new Error('A network was lost on the way.');
    if (!mine.settled) apart.push(`${named}: does not settle`);
    for (const output of controlled(network))
      if (holds(network, output, theirsOf(their)) !== ask.works(output))
        apart.push(`${named}: ${output} is held otherwise by ngspice's own currents`);
    for (const node of nodesOf(network).filter((each) => each !== ground)) {
      nodes++;
      const [here, there] = [mine.voltsAt(node), their.low.get(node) ?? Number.NaN];
      const isLoose = loose[at]?.has(node) ?? false;
      if (here === undefined || isLoose) {
        floating++;
        if (here !== undefined || !isLoose)
          apart.push(`${named}: ${node} ${isLoose ? 'floats' : 'is held'} in ngspice, not here`);
      } else if (!(Math.abs(here - there) <= allowed(there, isAtJunction(network, node))))
        apart.push(`${named}: ${node} is ${here} V here and ${there} V in ngspice`);
    }
  }
  return { networks: cases.length, nodes, floating, apart };
}

const looseNodes = ({ low, high }: Solved): ReadonlySet<Node> =>
  new Set(
    [...low]
      .filter(([node, volts]) => Math.abs((high.get(node) ?? volts) - volts) > follows)
      .map(([node]) => node),
  );

interface Told {
  readonly volts: (node: Node) => number;
  readonly amps: (part: string) => number;
}
const oursOf = (solution: Solution | undefined): Told => ({
  volts: (node) => solution?.voltsAt(node) ?? 0,
  amps: (part) => solution?.ampsIn(part) ?? 0,
});
const theirsOf = ({ low, amps }: Solved): Told => ({
  volts: (node) => low.get(node) ?? 0,
  amps: (part) => amps.get(part) ?? 0,
});

const controlled = (network: Network): readonly string[] =>
  network.flatMap((each) => (each.kind === 'switch' && each.closed && each.when ? [each.name] : []));

function holds(network: Network, name: string, told: Told): boolean {
  const output = network.find((each) => each.name === name);
  const when = output?.kind === 'switch' ? (output.when ?? []) : [];
  return when.every((control) => aboveThreshold(control, told.volts, told.amps) > 0);
}
