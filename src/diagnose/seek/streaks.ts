import type { InputName } from '../../model/machine.ts';
import type { StatusReading } from '../../model/reading.ts';
import { conditionOf } from '../motion/edges.ts';
import { stateIn } from '../signal/track.ts';
import type { SeekExpectation } from './expectation.ts';

/** For how many reports in a row each watched input has been operated. */
export class Streaks {
  private readonly expected: SeekExpectation;
  private readonly lengths = new Map<InputName, number>();
  private readonly seenFree = new Set<InputName>();

  constructor(expected: SeekExpectation) {
    this.expected = expected;
  }

  take(report: StatusReading): void {
    const { inputs, others, rest } = this.expected;
    for (const input of [...inputs, ...others]) {
      const condition = conditionOf(stateIn(report, input), rest[input]);
      if (condition === 'free') this.seenFree.add(input);
      this.lengths.set(input, condition === 'operated' ? this.of(input) + 1 : 0);
    }
  }

  of(input: InputName): number {
    return this.lengths.get(input) ?? 0;
  }

  /** The first of the axis's own inputs that is operated. */
  get own(): InputName | undefined {
    return this.expected.inputs.find((input) => this.of(input) > 0);
  }

  /** Inputs that should have stayed free, were free, and have been operated for `least` reports, but for no longer than the last `within`. */
  wrong(least: number, within: number): readonly InputName[] {
    return this.expected.others.filter(
      (input) => this.seenFree.has(input) && this.of(input) >= least && this.of(input) <= within,
    );
  }

  forget(): void {
    this.lengths.clear();
  }
}
