import { heldNodes } from './held-nodes.ts';
import { damped, junctionAmps } from './junction.ts';
import { Equations, type Stamped, startOf } from './linear.ts';
import {
  type Control,
  type Diode,
  type Element,
  middling,
  type Network,
  type Node,
  nodesOf,
  type Switch,
  type UnitPosition,
} from './network.ts';

/** The operating point of a network at direct current. */
export interface Solution {
  /** V against ground; undefined where the node floats. */
  readonly voltsAt: (node: Node) => number | undefined;
  readonly floating: readonly Node[];
  /** A, out of the element's `from`, through it, into its `to`; 0 beside a floating node. */
  readonly ampsIn: (name: string) => number;
  /** W turned into heat; negative where the element delivers. */
  readonly wattsIn: (name: string) => number;
  /** Ohm seen from ground into the node, for small changes; undefined where the node floats. */
  readonly sourceOhms: (node: Node) => number | undefined;
  /** Whether a unit's own spread decides what a controlled output does here: its control lies between surely off and surely on. */
  readonly hangs: boolean;
  /** False where controlled outputs chase each other and no operating point was found. */
  readonly settled: boolean;
}

/** Rounds of "solve, then see which controlled outputs work"; two levels of control exist, so more means they chase each other. */
const mostRounds = 8;
const mostSteps = 300;
/** V; Newton's steps shrink as their squares, so after one as small as this the error is below 1e-10 V. */
const closeEnough = 2e-6;
/** A; a junction that nothing else holds wanders by rounding alone, and through 1 Gohm this is a tenth of a millivolt. */
const noAmps = 1e-13;

/** Direct-current operating point by modified nodal analysis, Newton's steps for the junctions. A floating node is a result. */
export function solve(network: Network, unit: UnitPosition = middling): Solution {
  const held = heldNodes(network);
  const floating = nodesOf(network).filter((node) => !held.has(node));
  const within = network.filter(({ from, to }) => held.has(from) && held.has(to));
  const controlled = within.filter(
    (each): each is Switch => each.kind === 'switch' && each.when !== undefined,
  );
  let works = new Map(controlled.map(({ name }) => [name, false]));
  for (let round = 1; ; round++) {
    const stamped = within.flatMap((element) => stampedOf(element, works));
    const equations = operatingPoint(stamped);
    const solution = pointOf(stamped, equations, held, floating);
    const now = new Map(controlled.map(({ name, when }) => [name, holdsAll(when ?? [], unit, solution)]));
    const settled = controlled.every(({ name }) => now.get(name) === works.get(name));
    if (settled || round === mostRounds)
      return { ...solution, hangs: controlled.some((each) => each.closed && hangs(each, solution)), settled };
    works = now;
  }
}

type Point = Pick<Solution, 'voltsAt' | 'floating' | 'ampsIn' | 'wattsIn' | 'sourceOhms'>;

function stampedOf(element: Element, works: ReadonlyMap<string, boolean>): readonly Stamped[] {
  if (element.kind === 'capacitor') return [];
  const asResistor = element.kind === 'switch' ? resolved(element, works) : element;
  return asResistor.kind === 'resistor' && !Number.isFinite(asResistor.ohms) ? [] : [asResistor];
}

function resolved({ name, from, to, closed, ...more }: Switch, works: ReadonlyMap<string, boolean>): Stamped {
  const conducts = closed && (works.get(name) ?? true);
  return { kind: 'resistor', name, from, to, ohms: conducts ? more.closedOhms : more.openOhms };
}

function operatingPoint(stamped: readonly Stamped[]): Equations {
  const equations = new Equations(stamped);
  const diodes = stamped.filter((each): each is Diode => each.kind === 'diode');
  const junctions = new Map(diodes.map((diode) => [diode.name, startOf(diode)]));
  for (let step = 0; step < mostSteps; step++) {
    equations.solveAt(junctions);
    let moved = 0;
    for (const diode of diodes) {
      const before = junctions.get(diode.name) ?? 0;
      const wanted = equations.voltsAt(diode.from) - equations.voltsAt(diode.to);
      const next = damped(diode, wanted, before);
      if (Math.abs(junctionAmps(diode, next) - junctionAmps(diode, before)) > noAmps)
        moved = Math.max(moved, Math.abs(wanted - before));
      junctions.set(diode.name, next);
    }
    if (moved < closeEnough) return equations;
  }
  throw new RangeError(`No operating point after ${mostSteps} steps.`);
}

function pointOf(
  stamped: readonly Stamped[],
  equations: Equations,
  held: ReadonlySet<Node>,
  floating: readonly Node[],
): Point {
  const byName = new Map(stamped.map((each) => [each.name, each]));
  const voltsAt = (node: Node) => (held.has(node) ? equations.voltsAt(node) : undefined);
  const across = ({ from, to }: Stamped) => equations.voltsAt(from) - equations.voltsAt(to);
  const ampsIn = (name: string) => {
    const element = byName.get(name);
    return element === undefined ? 0 : (equations.branchAmps(name) ?? ampsAt(element, across(element)));
  };
  return {
    voltsAt,
    floating,
    ampsIn,
    wattsIn: (name) => {
      const element = byName.get(name);
      return element === undefined ? 0 : across(element) * ampsIn(name);
    },
    sourceOhms: (node) => (held.has(node) ? equations.sourceOhms(node) : undefined),
  };
}

function ampsAt(element: Stamped, volts: number): number {
  if (element.kind === 'diode') return junctionAmps(element, volts);
  if (element.kind === 'resistor') return volts / element.ohms;
  return element.kind === 'current' ? element.amps : Number.NaN;
}

function controlAt(control: Control, point: Point): number {
  if (control.by === 'current') return point.ampsIn(control.through);
  const [plus, minus] = [point.voltsAt(control.plus), point.voltsAt(control.minus)];
  return plus === undefined || minus === undefined ? 0 : plus - minus;
}

const holdsAll = (controls: readonly Control[], unit: UnitPosition, point: Point): boolean =>
  controls.every((each) => controlAt(each, point) > each.off + unit * (each.on - each.off));

/** Neither surely off (one control at or below its lower limit) nor surely on (all from their upper limits). */
function hangs({ when = [] }: Switch, point: Point): boolean {
  const surelyOff = when.some((each) => controlAt(each, point) <= each.off);
  return !surelyOff && when.some((each) => controlAt(each, point) < each.on);
}
