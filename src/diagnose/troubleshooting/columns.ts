import type { Chances } from './belief.ts';

/** The chances of one outcome under each hypothesis, as numbers that lie side by side: what a choice looks at thousands of times. */
export type Column = Float64Array;

/** A test's chances, laid out for both ways they are read. */
export interface Table {
  /** By outcome. */
  readonly columns: readonly Column[];
  /** By outcome the least chance that any hypothesis gives it. Most hypotheses give most outcomes no more: that someone slipped. */
  readonly least: Float64Array;
  /** Its binary logarithm; 0 for 0. */
  readonly logLeast: Float64Array;
  /** What is above the least: of hypothesis `h` in the places from `from[h]` up to `from[h + 1]`, each with its outcome. */
  readonly from: Int32Array;
  readonly outcome: Int32Array;
  readonly more: Float64Array;
}

const known = new WeakMap<Chances, Table>();

export function tableOf(chances: Chances, outcomes: number): Table {
  const before = known.get(chances);
  if (before) return before;
  const columns = Array.from({ length: outcomes }, (_, outcome) =>
    Float64Array.from(chances, (row) => row[outcome] ?? 0),
  );
  const least = Float64Array.from(columns, (column) =>
    column.reduce((least, each) => Math.min(least, each), 1),
  );
  const above = chances.map((row) =>
    row.flatMap((chance, outcome) => {
      const more = chance - (least[outcome] ?? 0);
      return more > 1e-9 ? [{ outcome, more }] : [];
    }),
  );
  const from = new Int32Array(chances.length + 1);
  for (const [hypothesis, each] of above.entries())
    from[hypothesis + 1] = (from[hypothesis] ?? 0) + each.length;
  const all = above.flat();
  const table = {
    columns,
    least,
    logLeast: least.map((share) => (share > 0 ? Math.log2(share) : 0)),
    from,
    outcome: Int32Array.from(all, ({ outcome }) => outcome),
    more: Float64Array.from(all, ({ more }) => more),
  };
  known.set(chances, table);
  return table;
}

export function sumOf(weights: Float64Array): number {
  let sum = 0;
  for (const each of weights) sum += each;
  return sum;
}
