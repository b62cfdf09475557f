import { heldNodes } from './held-nodes.ts';
import {
  type Control,
  type Element,
  middling,
  type Network,
  type Node,
  type Switch,
  type UnitPosition,
} from './network.ts';
import { operatingPoint, type Point } from './operating-point.ts';
import type { Stamped } from './stamped.ts';

/** The operating point of a network at direct current. */
export interface Solution {
  /** V against ground; undefined where the node floats. */
  readonly voltsAt: (node: Node) => number | undefined;
  /** A, out of the element's `from`, through it, into its `to`; 0 beside a floating node. */
  readonly ampsIn: (name: string) => number;
  /** W turned into heat; negative where the element delivers. */
  readonly wattsIn: (name: string) => number;
  /** Ohm seen from ground into the pin, for small changes; undefined where it floats. */
  readonly sourceOhms: (node: Node) => number | undefined;
  /** Whether a unit's own spread decides what a controlled output does here: its control lies between surely off and surely on. */
  readonly hangs: boolean;
  /** False where controlled outputs chase each other and no operating point was found. */
  readonly settled: boolean;
}

/** Rounds of "solve, then see which controlled outputs work"; two levels of control exist, so more means they chase each other. */
const mostRounds = 8;

/** Nodes whose source resistance is asked for again and again stay in the equations; for any other it costs another solution. */
const wanted: ReadonlySet<Node> = new Set(['pin', 'neighbour pin']);

/** Direct-current operating point by modified nodal analysis, Newton's steps for the junctions. A floating node is a result. */
export function solve(network: Network, unit: UnitPosition = middling): Solution {
  const held = heldNodes(network);
  const within = network.filter(({ from, to }) => held.has(from) && held.has(to));
  const controlled = within.filter(
    (each): each is Switch => each.kind === 'switch' && each.when !== undefined,
  );
  let works = new Map(controlled.map(({ name }) => [name, true]));
  for (let round = 1; ; round++) {
    const stamped = within.flatMap((element) => stampedOf(element, works));
    const point = pointWithin(stamped, held);
    const now = new Map(controlled.map(({ name, when }) => [name, holdsAll(when ?? [], unit, point)]));
    const settled = controlled.every(({ name, closed }) => !closed || now.get(name) === works.get(name));
    if (settled || round === mostRounds)
      return {
        ...point,
        hangs: controlled.some((each) => each.closed && hangs(each, point)),
        settled,
      };
    works = now;
  }
}

type Held = Pick<Solution, 'voltsAt' | 'ampsIn' | 'wattsIn' | 'sourceOhms'>;

function stampedOf(element: Element, works: ReadonlyMap<string, boolean>): readonly Stamped[] {
  if (element.kind === 'capacitor') return [];
  const asResistor = element.kind === 'switch' ? resolved(element, works) : element;
  return asResistor.kind === 'resistor' && !Number.isFinite(asResistor.ohms) ? [] : [asResistor];
}

function resolved({ name, from, to, closed, ...more }: Switch, works: ReadonlyMap<string, boolean>): Stamped {
  const conducts = closed && (works.get(name) ?? true);
  return { kind: 'resistor', name, from, to, ohms: conducts ? more.closedOhms : more.openOhms };
}

function pointWithin(stamped: readonly Stamped[], held: ReadonlySet<Node>): Held {
  const point: Point = operatingPoint(stamped, wanted);
  return {
    voltsAt: (node) => (held.has(node) ? point.voltsAt(node) : undefined),
    ampsIn: point.ampsIn,
    wattsIn: (name) => {
      const { from, to } = stamped.find((each) => each.name === name) ?? { from: '0 V', to: '0 V' };
      return (point.voltsAt(from) - point.voltsAt(to)) * point.ampsIn(name);
    },
    sourceOhms: (node) => {
      if (!held.has(node)) return undefined;
      return wanted.has(node)
        ? point.sourceOhms(node)
        : operatingPoint(stamped, new Set([node])).sourceOhms(node);
    },
  };
}

function controlAt(control: Control, point: Held): number {
  if (control.by === 'current') return point.ampsIn(control.through);
  const [plus, minus] = [point.voltsAt(control.plus), point.voltsAt(control.minus)];
  return plus === undefined || minus === undefined ? 0 : plus - minus;
}

const holdsAll = (controls: readonly Control[], unit: UnitPosition, point: Held): boolean =>
  controls.every((each) => controlAt(each, point) > each.off + unit * (each.on - each.off));

/** Neither surely off (one control at or below its lower limit) nor surely on (all from their upper limits). */
function hangs({ when = [] }: Switch, point: Held): boolean {
  const surelyOff = when.some((each) => controlAt(each, point) <= each.off);
  return !surelyOff && when.some((each) => controlAt(each, point) < each.on);
}
