import type { Mm } from '../../model/units.ts';
import type { Direction } from '../motion/runs.ts';
import { reportsForAlarm } from './limits.ts';

/**
 * The positions an axis was reported at while it stood, and whether it has certainly left them. A rounded number flickers between two
 * neighbours at most (its error is half a step, and so is the doubt of what is rounded): hence
 * - two reports in a row outside, the second further out than the first, are motion on any grid;
 * - two reports in a row two steps and more outside are motion where the grid is known;
 * - two of the last four reports outside a band of two neighbours are motion: a third value does not flicker.
 * Outside and back again is rest that was not known before.
 */
export class RestBand {
  private low: number;
  private high: number;
  /** The last positions, newest last, as long as the first of them was outside. */
  private doubtful: readonly number[] = [];
  private readonly step: Mm;
  private readonly gridKnown: boolean;

  constructor(first: number, step: Mm, gridKnown: boolean) {
    this.low = first;
    this.high = first;
    this.step = step;
    this.gridKnown = gridKnown;
  }

  /** The way the axis has certainly gone, or undefined while it may still stand. `saidStill`: the controller itself reports rest. */
  take(position: number, saidStill: boolean): Direction | undefined {
    const before = this.doubtful.at(-1);
    const way = this.wayOut(position);
    if (this.doubtful.length > 0 || way !== undefined) this.doubtful = [...this.doubtful, position];
    if (way !== undefined && this.hasLeft(before, position, way, saidStill)) return way;
    const patience = this.isTwoNeighbours && !saidStill ? 4 : reportsForAlarm;
    while (this.doubtful.length >= patience || this.isInside(this.doubtful[0])) this.settleOldest(way);
    return undefined;
  }

  /** mm outside the band, never negative. */
  past(position: number): number {
    return Math.max(0, this.low - position, position - this.high);
  }

  private hasLeft(before: number | undefined, now: number, way: Direction, saidStill: boolean): boolean {
    if (before !== undefined && this.wayOut(before) === way) {
      if ((now - before) * way >= this.step * 0.9) return true;
      if (this.isTwoNeighbours) return true;
      if (this.gridKnown && this.stepsPast(before) + this.stepsPast(now) > reportsForAlarm) return true;
    }
    const alike = this.doubtful.filter((each) => this.wayOut(each) === way).length;
    return this.isTwoNeighbours && !saidStill && alike >= reportsForAlarm;
  }

  /** What was outside and did not become motion was rest, unless the axis is outside the same way now. */
  private settleOldest(now: Direction | undefined): void {
    const [oldest, ...later] = this.doubtful;
    this.doubtful = later;
    if (oldest === undefined || this.isInside(oldest)) return;
    if (later.length > 0 && this.wayOut(oldest) === now) return;
    this.low = Math.min(this.low, oldest);
    this.high = Math.max(this.high, oldest);
  }

  private get isTwoNeighbours(): boolean {
    const width = Math.round((this.high - this.low) / this.step);
    return this.gridKnown ? width === 1 : width >= 1;
  }

  private stepsPast(position: number): number {
    return Math.round(this.past(position) / this.step);
  }

  private isInside(position: number | undefined): boolean {
    return position !== undefined && this.stepsPast(position) < 1;
  }

  private wayOut(position: number): Direction | undefined {
    if (this.isInside(position)) return undefined;
    return position > this.high ? 1 : -1;
  }
}
