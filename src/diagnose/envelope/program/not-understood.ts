import type { Unread } from './words.ts';

/** A line of a program that could not be followed, or only in part. */
export interface NotUnderstood {
  /** From 1. */
  readonly line: number;
  readonly text: string;
  readonly why: WhyNot;
}

export type WhyNot =
  | Unread
  | 'unknown-code'
  | 'may-be-skipped'
  /** An incremental move, an arc or a shift from a place that is not known, or known in another coordinate system. */
  | 'from-unknown-place'
  | 'arc-without-centre'
  | 'arc-radii-differ'
  | 'cycle-in-other-plane'
  | 'cycle-without-depth'
  | 'stored-point'
  | 'changes-offset'
  | 'cutter-compensation'
  /** Where a probe stops is up to the work. */
  | 'probe';
