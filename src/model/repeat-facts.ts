import type { AxisLetter } from './machine.ts';
import type { AxisUnit, Between } from './motion-facts.ts';
import type { Millis, Mm } from './units.ts';

/** How well an axis comes back to its switch. */
export interface RepeatFacts {
  readonly axis: AxisLetter;
  readonly unit: AxisUnit;
  readonly source: 'commanded' | 'measured';
  readonly n: number;
  readonly mean: number;
  /** Standard deviation, n − 1. */
  readonly s: number;
  readonly range: number;
  /** 4·s; `definition` says whose. */
  readonly unidirectional: Mm;
  readonly definition: 'ISO 230-2 unidirectional: 4 s';
  /** s made larger by what it falls short of the true deviation on average (s/c4); absent of one run. */
  readonly unbiased?: number | undefined;
  /** Where the true mean lies, 95 % (Student). */
  readonly mean95?: Between | undefined;
  /** Correlation of each run with the one before, where it is no chance at 5 %: the intervals then promise too much. */
  readonly lagOne?: number | undefined;
  /** Where the true standard deviation lies, 95 % (chi-square). */
  readonly deviation95?: Between | undefined;
  /** The one run that does not belong to the rest; index from 0. */
  readonly outlier?: { readonly index: number; readonly value: number } | undefined;
  /** How much further out each run came than the one before. */
  readonly drift?: { readonly slope: number } | undefined;
  readonly startPoints: number;
  /** What report period and position step could tell apart at all. */
  readonly blur: Mm;
  /** Usual time between two reports. */
  readonly period?: Millis | undefined;
  /** Where the stream is too coarse for it: the slowest report period that could tell at this speed. */
  readonly periodNeeded?: Millis | undefined;
  /** How far apart the count came to its trips though the gauge shows one place: steps were lost. */
  readonly countWanders?: Mm | undefined;
  /** Span that was to be kept. */
  readonly tolerance: Mm;
  readonly says: 'within' | 'beyond' | 'too-coarse' | 'too-few';
  /** Run by run, in one frame. */
  readonly runs: readonly RepeatRun[];
}

export interface RepeatRun {
  readonly place: Between<Mm>;
  readonly gauge?: Mm | undefined;
  readonly start?: Mm | undefined;
}
