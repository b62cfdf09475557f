import type { Mm } from '../../model/units.ts';
import type { Direction } from '../motion/runs.ts';

/**
 * The positions an axis was reported at while it stood, and whether it has certainly left them. A rounded number flickers between two
 * neighbours at most (its error is half a step, and so is the doubt of what is rounded): hence
 * - two reports in a row outside, the second further out than the first, are motion on any grid;
 * - two reports in a row outside a band of two neighbours are motion: a third value does not flicker;
 * - two reports in a row two steps and more outside are motion where the grid is known.
 * One report outside that comes back belongs to rest.
 */
export class RestBand {
  private low: number;
  private high: number;
  private outside: number | undefined;
  private readonly step: Mm;
  private readonly gridKnown: boolean;

  constructor(first: number, step: Mm, gridKnown: boolean) {
    this.low = first;
    this.high = first;
    this.step = step;
    this.gridKnown = gridKnown;
  }

  /** The way the axis has certainly gone, or undefined while it may still stand. */
  take(position: number): Direction | undefined {
    const way = this.wayOut(position);
    const before = this.outside;
    this.outside = way === undefined ? undefined : position;
    if (before === undefined) return undefined;
    if (way === undefined || way !== this.wayOut(before)) {
      this.widen(before);
      return undefined;
    }
    return this.hasLeft(before, position, way) ? way : undefined;
  }

  /** mm outside the band, never negative. */
  past(position: number): number {
    return Math.max(0, this.low - position, position - this.high);
  }

  private hasLeft(before: number, now: number, way: Direction): boolean {
    const [first, second] = [this.stepsPast(before), this.stepsPast(now)];
    if ((now - before) * way >= this.step * 0.9) return true;
    if (this.high > this.low) return first >= 1 && second >= 1;
    return first + second >= (this.gridKnown ? 3 : Number.POSITIVE_INFINITY);
  }

  private stepsPast(position: number): number {
    return Math.round(this.past(position) / this.step);
  }

  private wayOut(position: number): Direction | undefined {
    if (this.stepsPast(position) < 1) return undefined;
    return position > this.high ? 1 : -1;
  }

  private widen(to: number): void {
    this.low = Math.min(this.low, to);
    this.high = Math.max(this.high, to);
  }
}
