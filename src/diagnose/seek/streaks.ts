import type { InputName } from '../../model/machine.ts';
import type { StatusReading } from '../../model/reading.ts';
import { conditionOf } from '../motion/edges.ts';
import { stateIn, tellsTheSame } from '../signal/track.ts';
import type { SeekExpectation } from './expectation.ts';
import { ownTripWithin } from './limits.ts';

/** For how many reports in a row each watched input has been operated, and whether another axis worked it. */
export class Streaks {
  private readonly expected: SeekExpectation;
  private readonly lengths = new Map<InputName, number>();
  /** Inputs that became operated while their own axis was on its way. */
  private readonly excused = new Set<InputName>();
  private readonly pivots = new Map<string, { readonly position: number; readonly report: number }>();
  private readonly watched: readonly InputName[];
  private readonly otherAxes: readonly string[];
  private reports = 0;
  private before: StatusReading | undefined;
  /** Those that the last report shows so. */
  private operated: readonly InputName[] = [];

  constructor(expected: SeekExpectation) {
    this.expected = expected;
    const { inputs, others } = expected;
    this.watched = [...inputs, ...others.map((each) => each.input)];
    this.otherAxes = [...new Set(others.flatMap((each) => each.axis ?? []))];
  }

  take(report: StatusReading): void {
    this.reports++;
    for (const axis of this.otherAxes) this.follow(report, axis);
    if (!this.before || !tellsTheSame(this.before, report)) this.look(report);
    this.before = report;
    if (this.operated.length === 0) return;
    for (const input of this.operated) this.lengths.set(input, this.of(input) + 1);
    for (const { input, axis } of this.expected.others)
      if (this.of(input) > 0 && axis !== undefined && this.isMoving(axis)) this.excused.add(input);
  }

  private look(report: StatusReading): void {
    const { rest } = this.expected;
    const isOperated = (input: InputName) => conditionOf(stateIn(report, input), rest[input]) === 'operated';
    this.operated = this.watched.filter(isOperated);
    for (const input of this.watched)
      if (!this.operated.includes(input)) {
        this.lengths.delete(input);
        this.excused.delete(input);
      }
  }

  of(input: InputName): number {
    return this.lengths.get(input) ?? 0;
  }

  /** The first of the axis's own inputs that is operated. */
  get own(): InputName | undefined {
    return this.expected.inputs.find((input) => this.of(input) > 0);
  }

  /** Inputs that should have stayed free and have been operated for `least` reports, but for no longer than the last `within`. */
  wrong(least: number, within: number): readonly InputName[] {
    return this.expected.others.flatMap(({ input }) =>
      this.of(input) >= least && this.of(input) <= within && !this.excused.has(input) ? [input] : [],
    );
  }

  forget(): void {
    this.lengths.clear();
    this.pivots.clear();
  }

  private follow(report: StatusReading, axis: string): void {
    const position = report.positions[report.axes.indexOf(axis)];
    if (position === undefined) return;
    const pivot = this.pivots.get(axis);
    if (!pivot) this.pivots.set(axis, { position, report: Number.NEGATIVE_INFINITY });
    else if (Math.abs(position - pivot.position) >= this.expected.step * 1.9)
      this.pivots.set(axis, { position, report: this.reports });
  }

  private isMoving(axis: string): boolean {
    return this.reports - (this.pivots.get(axis)?.report ?? Number.NEGATIVE_INFINITY) <= ownTripWithin;
  }
}
