import { sumOf, type Table } from './columns.ts';

/** What is believed, put together: joint weights of hypotheses, and the class of each. */
export interface Spread {
  readonly at: Int32Array;
  readonly weight: Float64Array;
  readonly total: number;
  readonly of: Int32Array;
  /** The weight of each class. */
  readonly sums: Float64Array;
}

const plogp = (p: number): number => (p > 0 ? p * Math.log2(p) : 0);

/** Entropy over classes, bits. */
export const openIn = ({ sums, total }: Spread): number =>
  (plogp(total) - sums.reduce((sum, each) => sum + plogp(each), 0)) / total;

/**
 * Reads off how much tests tell of a spread. An outcome gives every class its share of the least chance; only what is above that is gone
 * through, for the sum of p log p over equal shares of all classes is known beforehand.
 */
export class Informer {
  private spread: Spread | undefined;
  private logs = new Float64Array(0);
  private all = 0;
  /** By outcome and class, what is above the least; zero again after each test. */
  private above = new Float64Array(0);
  private touched = new Int32Array(0);

  /** From now on of this spread. */
  lookAt(spread: Spread): void {
    this.spread = spread;
    this.logs = Float64Array.from(spread.sums, plogp);
    this.all = sumOf(this.logs);
  }

  /** Expected fall of the entropy over classes, bits. */
  bitsOf(table: Table): number {
    const { spread } = this;
    if (!spread) return 0;
    const { least, logLeast } = table;
    const { total, sums } = spread;
    const classes = sums.length;
    const cells = this.collect(table, spread);
    let left = 0;
    // Cells of one outcome do not lie together: each adds its part to the entropy inside its outcome.
    const chances = Float64Array.from(least, (share) => share * total);
    for (let outcome = 0; outcome < least.length; outcome++)
      left -= (least[outcome] ?? 0) * (this.all + (logLeast[outcome] ?? 0) * total);
    for (let i = 0; i < cells; i++) {
      const cell = this.touched[i] ?? 0;
      const outcome = Math.floor(cell / classes);
      const group = cell - outcome * classes;
      const extra = this.above[cell] ?? 0;
      this.above[cell] = 0;
      const share = least[outcome] ?? 0;
      const sum = sums[group] ?? 0;
      chances[outcome] = (chances[outcome] ?? 0) + extra;
      left -= plogp(share * sum + extra) - share * ((this.logs[group] ?? 0) + (logLeast[outcome] ?? 0) * sum);
    }
    for (const chance of chances) left += plogp(chance);
    return Math.max(0, (plogp(total) - this.all - left) / total);
  }

  /** Fills `above`, and gives how many of its cells are filled; `touched` names them. */
  private collect({ least, from, outcome, more }: Table, { at, weight, of, sums }: Spread): number {
    const classes = sums.length;
    if (this.above.length < least.length * classes) {
      this.above = new Float64Array(least.length * classes);
      this.touched = new Int32Array(least.length * classes);
    }
    const { above, touched } = this;
    let cells = 0;
    for (let i = 0; i < at.length; i++) {
      const hypothesis = at[i] ?? 0;
      const end = from[hypothesis + 1] ?? 0;
      for (let place = from[hypothesis] ?? 0; place < end; place++) {
        const cell = (outcome[place] ?? 0) * classes + (of[i] ?? 0);
        const before = above[cell] ?? 0;
        if (before === 0) touched[cells++] = cell;
        above[cell] = before + (weight[i] ?? 0) * (more[place] ?? 0);
      }
    }
    return cells;
  }
}
