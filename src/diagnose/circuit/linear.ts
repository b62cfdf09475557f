import { LuDecomposition, Matrix } from 'ml-matrix';
import { type Tangent, tangentAt } from './junction.ts';
import { type Diode, type Element, ground, type Node } from './network.ts';

/** What stands in the equations: elements between held nodes, switches already resolved to a resistance. */
export type Stamped = Exclude<Element, { kind: 'switch' | 'capacitor' }>;

/** The unknowns of modified nodal analysis: one voltage a node, one current a source or ideal wire. */
export class Equations {
  readonly #rows: ReadonlyMap<Node, number>;
  readonly #branches: ReadonlyMap<string, number>;
  readonly #elements: readonly Stamped[];
  readonly #size: number;
  #factors: LuDecomposition | undefined;
  #answer: readonly number[] = [];

  constructor(elements: readonly Stamped[]) {
    const nodes = new Set(elements.flatMap(({ from, to }) => [from, to]));
    nodes.delete(ground);
    this.#elements = elements;
    this.#rows = new Map([...nodes].map((node, row) => [node, row]));
    const branches = elements.filter(isBranch).map(({ name }) => name);
    this.#branches = new Map(branches.map((name, at) => [name, nodes.size + at]));
    this.#size = nodes.size + branches.length;
  }

  /** Solves once with each junction replaced by its tangent. Throws where ideal sources contradict each other. */
  solveAt(junctions: ReadonlyMap<string, number>): void {
    if (this.#size === 0) return;
    const matrix = Matrix.zeros(this.#size, this.#size);
    const right = Matrix.zeros(this.#size, 1);
    for (const element of this.#elements) this.#stamp(matrix, right, element, junctions);
    this.#factors = new LuDecomposition(matrix);
    if (this.#factors.isSingular())
      throw new RangeError('Ideal sources of the network contradict each other.');
    this.#answer = this.#factors.solve(right).to1DArray();
  }

  voltsAt(node: Node): number {
    const row = this.#rows.get(node);
    return row === undefined ? 0 : (this.#answer[row] ?? Number.NaN);
  }

  /** Out of `from`, through the element, into `to`; only of sources and ideal wires, whose current is an unknown. */
  branchAmps(name: string): number | undefined {
    const row = this.#branches.get(name);
    return row === undefined ? undefined : this.#answer[row];
  }

  /** Change of the node's voltage a unit of current pushed into it would make, ohm, at the tangents last solved with. */
  sourceOhms(node: Node): number {
    const row = this.#rows.get(node);
    if (row === undefined || this.#factors === undefined) return 0;
    const push = Matrix.zeros(this.#size, 1);
    push.set(row, 0, 1);
    return this.#factors.solve(push).get(row, 0);
  }

  #stamp(matrix: Matrix, right: Matrix, element: Stamped, junctions: ReadonlyMap<string, number>): void {
    const from = this.#rows.get(element.from);
    const to = this.#rows.get(element.to);
    const branch = this.#branches.get(element.name);
    if (branch !== undefined) {
      add(matrix, from, branch, 1);
      add(matrix, to, branch, -1);
      add(matrix, branch, from, 1);
      add(matrix, branch, to, -1);
      if (element.kind === 'voltage') add(right, branch, 0, element.volts);
      return;
    }
    const { conductance, offset } = admittance(element, junctions);
    add(matrix, from, from, conductance);
    add(matrix, to, to, conductance);
    add(matrix, from, to, -conductance);
    add(matrix, to, from, -conductance);
    add(right, from, 0, -offset);
    add(right, to, 0, offset);
  }
}

const isBranch = (element: Stamped): boolean =>
  element.kind === 'voltage' || (element.kind === 'resistor' && element.ohms === 0);

function admittance(element: Stamped, junctions: ReadonlyMap<string, number>): Tangent {
  if (element.kind === 'diode') return tangentAt(element, junctions.get(element.name) ?? startOf(element));
  if (element.kind === 'resistor') return { conductance: 1 / element.ohms, offset: 0 };
  return { conductance: 0, offset: element.kind === 'current' ? element.amps : 0 };
}

/** Near where a conducting junction ends up, which saves steps; a blocking one falls back in one. */
export const startOf = (diode: Diode): number => 0.5 * diode.ideality;

function add(matrix: Matrix, row: number | undefined, column: number | undefined, value: number): void {
  if (row === undefined || column === undefined) return;
  matrix.set(row, column, matrix.get(row, column) + value);
}
