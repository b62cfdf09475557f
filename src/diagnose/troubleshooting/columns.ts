import type { Chances } from './belief.ts';

/** The chances of one outcome under each hypothesis, as numbers that lie side by side: what a choice looks at thousands of times. */
export type Column = Float64Array;

const known = new WeakMap<Chances, readonly Column[]>();

export function columnsOf(chances: Chances, outcomes: number): readonly Column[] {
  const before = known.get(chances);
  if (before) return before;
  const columns = Array.from({ length: outcomes }, (_, outcome) =>
    Float64Array.from(chances, (row) => row[outcome] ?? 0),
  );
  known.set(chances, columns);
  return columns;
}

/** Which class each hypothesis belongs to, with the classes counted from 0. */
export interface Classes {
  readonly of: Int32Array;
  readonly count: number;
}

export function classesOf(classOf: readonly number[]): Classes {
  const of = Int32Array.from(classOf);
  return { of, count: of.reduce((most, each) => Math.max(most, each + 1), 0) };
}

/** The hypotheses that still count, packed together: which they are, how likely, and their classes counted anew from 0. */
export interface Alive {
  readonly at: Int32Array;
  readonly weight: Float64Array;
  readonly of: Int32Array;
  readonly classes: number;
}

/** Leaves out what is less likely than `least`. */
export function aliveIn(belief: ArrayLike<number>, classes: Classes, least: number): Alive {
  const at: number[] = [];
  for (let i = 0; i < belief.length; i++) if ((belief[i] ?? 0) > least) at.push(i);
  const numbers = new Int32Array(classes.count).fill(-1);
  let count = 0;
  const of = Int32Array.from(at, (i) => {
    const group = classes.of[i] ?? 0;
    if (numbers[group] === -1) numbers[group] = count++;
    return numbers[group] ?? 0;
  });
  return {
    at: Int32Array.from(at),
    weight: Float64Array.from(at, (i) => belief[i] ?? 0),
    of,
    classes: count,
  };
}

/** The weight of each class after an outcome of this column (not made to sum to 1). */
export function jointWeights({ at, weight, of, classes }: Alive, column: Column): Float64Array {
  const weights = new Float64Array(classes);
  for (let i = 0; i < at.length; i++) {
    const group = of[i] ?? 0;
    weights[group] = (weights[group] ?? 0) + (weight[i] ?? 0) * (column[at[i] ?? 0] ?? 0);
  }
  return weights;
}

/** The weight of each class. */
export function groupWeights({ at, weight, of, classes }: Alive): Float64Array {
  const weights = new Float64Array(classes);
  for (let i = 0; i < at.length; i++) weights[of[i] ?? 0] = (weights[of[i] ?? 0] ?? 0) + (weight[i] ?? 0);
  return weights;
}

export function mostOf(weights: Float64Array): number {
  let most = 0;
  for (const each of weights) if (each > most) most = each;
  return most;
}

export function sumOf(weights: Float64Array): number {
  let sum = 0;
  for (const each of weights) sum += each;
  return sum;
}

/** Entropy of weights that sum to `total`, times `total`, bits. */
export function entropyTimes(weights: Float64Array, total: number): number {
  let sum = 0;
  for (const each of weights) if (each > 0) sum -= each * Math.log2(each / total);
  return sum;
}
