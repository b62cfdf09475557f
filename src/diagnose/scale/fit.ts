import { type Mm, mm } from '../../model/units.ts';

/** One commanded move and what a tape, caliper or gauge showed of it; both as lengths, mm. */
export interface ScaleRun {
  readonly commanded: Mm;
  readonly measured: Mm;
  /** The commanded way of the measured move. */
  readonly way: 1 | -1;
  /** The move before it went the other way: what is loose was taken up in this one. */
  readonly afterReversal: boolean;
}

export interface ScaleFit {
  /** Measured over commanded, backlash and ends apart. */
  readonly ratio: number;
  /** What every length reads too long or short by, mm: where the tape was held, not the machine. */
  readonly offset: Mm;
  /** Lost on each reversal, mm; undefined where no run, or every run, was made after one. */
  readonly backlash: Mm | undefined;
  /** The ratio of each way alone; unlike ways slip or lose steps. Undefined where one way has not two lengths. */
  readonly byWay: { readonly positive: number; readonly negative: number } | undefined;
  /** The largest distance of a measurement from the fit, mm. */
  readonly worst: Mm;
}

/**
 * Fits measured = ratio·commanded + offset − backlash·(after a reversal) by least squares. Backlash is the same at any length, scale is not: hence two lengths at least.
 * Undefined where the runs cannot tell ratio from offset.
 */
export function fitScale(runs: readonly ScaleRun[]): ScaleFit | undefined {
  const told = new Set(runs.map((run) => run.afterReversal)).size > 1;
  const rows = runs.map((run) => [run.commanded, 1, ...(told ? [run.afterReversal ? -1 : 0] : [])]);
  const solved = leastSquares(
    rows,
    runs.map(({ measured }) => measured),
  );
  if (!solved) return undefined;
  const [ratio = 1, offset = 0, backlash] = solved;
  const rests = runs.map((run, i) => run.measured - dot(rows[i] ?? [], solved));
  return {
    ratio,
    offset: mm(offset),
    backlash: told ? mm(backlash ?? 0) : undefined,
    byWay: byWay(runs),
    worst: mm(Math.max(...rests.map(Math.abs))),
  };
}

function byWay(runs: readonly ScaleRun[]): ScaleFit['byWay'] {
  const ratioOf = (way: 1 | -1) => {
    const own = runs.filter((run) => run.way === way);
    const told = new Set(own.map((run) => run.afterReversal)).size > 1;
    const rows = own.map((run) => [run.commanded, 1, ...(told ? [run.afterReversal ? -1 : 0] : [])]);
    return leastSquares(
      rows,
      own.map(({ measured }) => measured),
    )?.[0];
  };
  const [positive, negative] = [ratioOf(1), ratioOf(-1)];
  return positive !== undefined && negative !== undefined ? { positive, negative } : undefined;
}

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);

/** Normal equations by elimination with row exchange; undefined where the rows do not determine the answer. */
function leastSquares(rows: readonly (readonly number[])[], wanted: readonly number[]): number[] | undefined {
  const width = rows[0]?.length ?? 0;
  if (rows.length < width || width === 0) return undefined;
  const column = (k: number) => rows.map((row) => row[k] ?? 0);
  const table = Array.from({ length: width }, (_, i) => [
    ...Array.from({ length: width }, (_, k) => dot(column(i), column(k))),
    dot(column(i), wanted),
  ]);
  const size = Math.max(...table.map((row, i) => Math.abs(row[i] ?? 0)));
  for (let i = 0; i < width; i++) {
    const pivot = table.slice(i).reduce((a, b) => (Math.abs(b[i] ?? 0) > Math.abs(a[i] ?? 0) ? b : a));
    const at = table.indexOf(pivot);
    if (Math.abs(pivot[i] ?? 0) <= size * 1e-12) return undefined;
    [table[at], table[i]] = [table[i] ?? [], pivot];
    for (const row of table.slice(i + 1)) {
      const factor = (row[i] ?? 0) / (pivot[i] ?? 1);
      for (let k = i; k <= width; k++) row[k] = (row[k] ?? 0) - factor * (pivot[k] ?? 0);
    }
  }
  const solution = new Array<number>(width).fill(0);
  for (let i = width - 1; i >= 0; i--) {
    const row = table[i] ?? [];
    const known = solution.reduce((sum, value, k) => (k > i ? sum + value * (row[k] ?? 0) : sum), 0);
    solution[i] = ((row[width] ?? 0) - known) / (row[i] ?? 1);
  }
  return solution;
}
