import { impossibleSpeed } from '../motion/jumps.ts';
import { overRapid, resetSteps } from '../motion/limits.ts';
import { longestQuiet } from '../motion/silences.ts';
import type { AxisSample } from '../motion/track.ts';
import type { SeekExpectation } from './expectation.ts';

/** What following an axis report by report makes of one more position. */
export type Followed = 'goes-on' | 'set-aside' | 'new-frame';

const speedsKept = 4;

/** Follows one axis report by report: how fast it goes, and whether a position can be believed. */
export class Following {
  /** Set once the fastest part of the seek is over: nothing after it goes much faster. */
  hasPeaked = false;
  private readonly expected: SeekExpectation;
  private last: AxisSample | undefined;
  private doubted: AxisSample | undefined;
  private speeds: number[] = [];
  private fastest = 0;
  private reports = 0;
  private passed = 0;

  constructor(expected: SeekExpectation) {
    this.expected = expected;
  }

  /** mm/s, the fastest of the last few reports: one that was stamped late hides speed. */
  get speed(): number {
    return this.speeds.reduce((most, each) => Math.max(most, each), 0);
  }

  /** No report for so long before this one that anything can have happened. */
  wasSilentBefore({ at }: AxisSample): boolean {
    return this.last !== undefined && at - this.last.at > longestQuiet(this.usual);
  }

  /** A single leap is set aside; two that agree are a new frame, in which everything begins anew. */
  take(sample: AxisSample): Followed {
    const leaps = this.last !== undefined && this.leaps(this.last, sample);
    if (leaps && (!this.doubted || this.leaps(this.doubted, sample))) {
      this.doubted = sample;
      return 'set-aside';
    }
    this.doubted = undefined;
    if (leaps) this.forget();
    this.goOn(sample);
    return leaps ? 'new-frame' : 'goes-on';
  }

  forget(): void {
    this.last = undefined;
    this.doubted = undefined;
    this.speeds = [];
    this.passed = 0;
    this.reports = 0;
  }

  private goOn(sample: AxisSample): void {
    if (this.last) {
      this.passed += sample.at - this.last.at;
      this.reports++;
      this.speeds.push(Math.abs(sample.position - this.last.position) / this.seconds(this.last, sample));
      this.fastest = Math.max(this.fastest, this.speed);
      if (this.speeds.length > speedsKept) this.speeds.shift();
    }
    this.last = sample;
  }

  private get usual(): number {
    return this.reports > 0 ? this.passed / this.reports : 0;
  }

  /** Reports may be stamped closer together than they were taken; a usual period is granted to each. */
  private seconds(from: AxisSample, to: AxisSample): number {
    return Math.max(to.at - from.at, this.usual, 1) / 1000;
  }

  private leaps(from: AxisSample, to: AxisSample): boolean {
    const { step, rapid, homeValue } = this.expected;
    const gone = Math.abs(to.position - from.position);
    const isZeroSet = homeValue !== undefined && Math.abs(to.position - homeValue) <= step * 1.01;
    if (this.hasPeaked && isZeroSet && gone > resetSteps * step) return true;
    const possible = impossibleSpeed(rapid);
    const limit = this.hasPeaked ? Math.min(possible, this.fastest * overRapid) : possible;
    return gone > limit * this.seconds(from, to) + 2 * step;
  }
}
