import type { AxisLetter } from '../../../model/machine.ts';
import { type Mm, mm } from '../../../model/units.ts';

/** The coordinate systems a program's positions may be counted in: the nine of RS-274, whichever was active before it began, or the machine's own. */
export type System =
  | 'active'
  | 'machine'
  | 'G54'
  | 'G55'
  | 'G56'
  | 'G57'
  | 'G58'
  | 'G59'
  | 'G59.1'
  | 'G59.2'
  | 'G59.3';

/** How far a program goes along one axis, and the lines that take it there. Degrees on a rotary axis. */
export interface Extent {
  readonly low: Mm;
  readonly high: Mm;
  readonly lowLine: number;
  readonly highLine: number;
}

export interface ProgramBox {
  readonly system: System;
  readonly axes: Readonly<Partial<Record<AxisLetter, Extent>>>;
}

/** Gathers how far a program goes in each coordinate system. */
export class Boxes {
  private readonly found = new Map<System, Map<AxisLetter, Extent>>();

  add(system: System, axis: AxisLetter, low: number, high: number, line: number): void {
    const axes = this.found.get(system) ?? new Map<AxisLetter, Extent>();
    this.found.set(system, axes);
    const before = axes.get(axis);
    axes.set(axis, {
      low: mm(before && before.low <= low ? before.low : low),
      high: mm(before && before.high >= high ? before.high : high),
      lowLine: before && before.low <= low ? before.lowLine : line,
      highLine: before && before.high >= high ? before.highLine : line,
    });
  }

  all(): readonly ProgramBox[] {
    return [...this.found].map(([system, axes]) => ({ system, axes: Object.fromEntries(axes) }));
  }
}
