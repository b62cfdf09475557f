import { LuDecomposition, Matrix } from 'ml-matrix';
import { type Diode, ground, type Node } from './network.ts';
import type { Stamped } from './stamped.ts';

/** S; stands in for every junction while the linear part is factored. Between a lit junction and a leak, so that neither drowns. */
export const standIn = 1e-5;

/**
 * The linear part of a network by modified nodal analysis: one voltage a node, one current a source or ideal wire. Junctions are
 * ports: each column of `ports` says what one ampere pushed into a port does everywhere.
 */
export class LinearPart {
  readonly #rows: ReadonlyMap<Node, number>;
  readonly #branches: ReadonlyMap<string, number>;
  readonly #factors: LuDecomposition;
  readonly #size: number;
  readonly #diodes: readonly Diode[];
  /** Column 0: the sources alone. Column k + 1: one ampere into the anode of junction k and out of its cathode. */
  readonly #answers: Matrix;

  /** Throws where ideal sources contradict each other. */
  constructor(elements: readonly Stamped[], diodes: readonly Diode[]) {
    const nodes = new Set(elements.flatMap(({ from, to }) => [from, to]));
    nodes.delete(ground);
    const branches = elements.filter(isBranch).map(({ name }) => name);
    this.#diodes = diodes;
    this.#rows = new Map([...nodes].map((node, row) => [node, row]));
    this.#branches = new Map(branches.map((name, at) => [name, nodes.size + at]));
    this.#size = nodes.size + branches.length;
    const matrix = Matrix.zeros(Math.max(this.#size, 1), Math.max(this.#size, 1));
    const right = Matrix.zeros(Math.max(this.#size, 1), 1 + diodes.length);
    if (this.#size === 0) matrix.set(0, 0, 1);
    for (const element of elements) this.#stamp(matrix, right, element);
    for (const [at, diode] of diodes.entries()) {
      add(right, this.#rows.get(diode.from), at + 1, 1);
      add(right, this.#rows.get(diode.to), at + 1, -1);
    }
    this.#factors = new LuDecomposition(matrix);
    if (this.#factors.isSingular())
      throw new RangeError('Ideal sources of the network contradict each other.');
    this.#answers = this.#factors.solve(right);
  }

  /** V of a node, where the ports are pushed so; without sources where only a change is asked for. */
  voltsAt(node: Node, pushed: readonly number[], sources = 1): number {
    const row = this.#rows.get(node);
    return row === undefined ? 0 : this.#valueAt(row, pushed, sources);
  }

  /** A out of `from`, through the element, into `to`; only of sources and ideal wires, whose current is an unknown. */
  branchAmps(name: string, pushed: readonly number[]): number | undefined {
    const row = this.#branches.get(name);
    return row === undefined ? undefined : this.#valueAt(row, pushed, 1);
  }

  /** V across each port with nothing pushed, and what each port's ampere does to each port, ohm. */
  ports(): { readonly open: readonly number[]; readonly ohms: readonly (readonly number[])[] } {
    const across = (diode: Diode, column: number) =>
      this.#at(diode.from, column) - this.#at(diode.to, column);
    return {
      open: this.#diodes.map((diode) => across(diode, 0)),
      ohms: this.#diodes.map((diode) => this.#diodes.map((_, at) => across(diode, at + 1))),
    };
  }

  /** One ampere pushed from ground into a node: V there, and across each port. */
  pushedInto(node: Node): { readonly here: number; readonly ports: readonly number[] } {
    const row = this.#rows.get(node);
    if (row === undefined) return { here: 0, ports: this.#diodes.map(() => 0) };
    const push = Matrix.zeros(this.#size, 1);
    push.set(row, 0, 1);
    const answer = this.#factors.solve(push);
    const at = (each: Node) => {
      const found = this.#rows.get(each);
      return found === undefined ? 0 : answer.get(found, 0);
    };
    return { here: answer.get(row, 0), ports: this.#diodes.map(({ from, to }) => at(from) - at(to)) };
  }

  #at(node: Node, column: number): number {
    const row = this.#rows.get(node);
    return row === undefined ? 0 : this.#answers.get(row, column);
  }

  #valueAt(row: number, pushed: readonly number[], sources: number): number {
    return pushed.reduce(
      (sum, amps, at) => sum + amps * this.#answers.get(row, at + 1),
      sources * this.#answers.get(row, 0),
    );
  }

  #stamp(matrix: Matrix, right: Matrix, element: Stamped): void {
    const from = this.#rows.get(element.from);
    const to = this.#rows.get(element.to);
    const branch = this.#branches.get(element.name);
    if (branch !== undefined) {
      add(matrix, from, branch, 1);
      add(matrix, to, branch, -1);
      add(matrix, branch, from, 1);
      add(matrix, branch, to, -1);
      if (element.kind === 'voltage') add(right, branch, 0, element.volts);
    } else if (element.kind === 'current') {
      add(right, from, 0, -element.amps);
      add(right, to, 0, element.amps);
    } else {
      const conductance = element.kind === 'resistor' ? 1 / element.ohms : standIn;
      add(matrix, from, from, conductance);
      add(matrix, to, to, conductance);
      add(matrix, from, to, -conductance);
      add(matrix, to, from, -conductance);
    }
  }
}

const isBranch = (element: Stamped): boolean =>
  element.kind === 'voltage' || (element.kind === 'resistor' && element.ohms === 0);

function add(matrix: Matrix, row: number | undefined, column: number | undefined, value: number): void {
  if (row === undefined || column === undefined) return;
  matrix.set(row, column, matrix.get(row, column) + value);
}
