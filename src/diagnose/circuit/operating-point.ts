import { Matrix, solve as solveLinear } from 'ml-matrix';
import { type Shortened, shortened } from './chains.ts';
import { damped, junctionAmps, junctionSlope } from './junction.ts';
import { LinearPart, standIn } from './linear.ts';
import type { Diode, Node } from './network.ts';
import type { Stamped } from './stamped.ts';

/** Voltages and currents of a network in which every switch is already resolved and every node is held. */
export interface Point {
  readonly voltsAt: (node: Node) => number;
  readonly ampsIn: (name: string) => number;
  readonly sourceOhms: (node: Node) => number;
}

const mostSteps = 300;
/** V; Newton's steps shrink as their squares, so after one as small as this the error is below 1e-10 V. */
const closeEnough = 2e-6;
/** A; a junction that nothing else holds wanders by rounding alone, and through 1 Gohm this is a tenth of a millivolt. */
const noAmps = 1e-13;

/** Newton's steps over the junctions alone: the linear part between them is factored once. */
export function operatingPoint(elements: readonly Stamped[], wanted: ReadonlySet<Node>): Point {
  const diodes = elements.filter((each): each is Diode => each.kind === 'diode');
  const short = shortened(elements, wanted);
  const linear = new LinearPart(short.elements, diodes);
  const junctions = junctionVolts(diodes, linear);
  const pushed = diodes.map((diode, at) => pushOf(diode, junctions[at] ?? 0));
  const voltsAt = (node: Node) => short.voltsAt(node, (kept) => linear.voltsAt(kept, pushed));
  return {
    voltsAt,
    ampsIn: ampsBy(
      elements,
      short,
      linear,
      pushed,
      voltsAt,
      (diode) => junctions[diodes.indexOf(diode)] ?? 0,
    ),
    sourceOhms: (node) => sourceOhms(node, diodes, junctions, linear),
  };
}

/** What a junction pushes into its port beside its stand-in. */
const pushOf = (diode: Diode, volts: number): number => standIn * volts - junctionAmps(diode, volts);

function junctionVolts(diodes: readonly Diode[], linear: LinearPart): readonly number[] {
  if (diodes.length === 0) return [];
  const { open, ohms } = linear.ports();
  let volts = diodes.map(startOf);
  for (let step = 0; step < mostSteps; step++) {
    const now = volts;
    const off = diodes.map((_, row) => {
      const reached = diodes.reduce(
        (sum, each, at) => sum + (ohms[row]?.[at] ?? 0) * pushOf(each, now[at] ?? 0),
        open[row] ?? 0,
      );
      return (now[row] ?? 0) - reached;
    });
    const steps = solveLinear(slopes(diodes, now, ohms), Matrix.columnVector(off)).to1DArray();
    let moved = 0;
    volts = diodes.map((diode, at) => {
      const before = now[at] ?? 0;
      const wanted = before - (steps[at] ?? 0);
      const next = damped(diode, wanted, before);
      const amps = Math.abs(junctionAmps(diode, next) - junctionAmps(diode, before));
      if (amps > noAmps) moved = Math.max(moved, Math.abs(wanted - before));
      return next;
    });
    if (moved < closeEnough) return volts;
  }
  throw new RangeError(`No operating point after ${mostSteps} steps.`);
}

/** Near where a conducting junction ends up, which saves steps; a blocking one falls back in one or two. */
const startOf = (diode: Diode): number => 0.5 * diode.ideality;

/** How the mismatch at each port changes with the voltage of each junction. */
function slopes(
  diodes: readonly Diode[],
  volts: readonly number[],
  ohms: readonly (readonly number[])[],
): Matrix {
  return new Matrix(
    diodes.map((_, row) =>
      diodes.map((diode, at) => {
        const conductance = standIn - junctionSlope(diode, volts[at] ?? 0);
        return (row === at ? 1 : 0) - (ohms[row]?.[at] ?? 0) * conductance;
      }),
    ),
  );
}

function sourceOhms(
  node: Node,
  diodes: readonly Diode[],
  volts: readonly number[],
  linear: LinearPart,
): number {
  const { here, ports } = linear.pushedInto(node);
  if (diodes.length === 0) return here;
  const { ohms } = linear.ports();
  const swing = solveLinear(slopes(diodes, volts, ohms), Matrix.columnVector([...ports])).to1DArray();
  const pushed = diodes.map(
    (diode, at) => (standIn - junctionSlope(diode, volts[at] ?? 0)) * (swing[at] ?? 0),
  );
  return here + linear.voltsAt(node, pushed, 0);
}

function ampsBy(
  elements: readonly Stamped[],
  short: Shortened,
  linear: LinearPart,
  pushed: readonly number[],
  voltsAt: (node: Node) => number,
  junction: (diode: Diode) => number,
): (name: string) => number {
  return (name) => {
    const element = elements.find((each) => each.name === name);
    if (element === undefined) return 0;
    if (element.kind === 'diode') return junctionAmps(element, junction(element));
    if (element.kind === 'current') return element.amps;
    const branch = linear.branchAmps(short.carrier(name), pushed);
    if (branch !== undefined || element.kind === 'voltage') return branch ?? 0;
    return (voltsAt(element.from) - voltsAt(element.to)) / element.ohms;
  };
}
