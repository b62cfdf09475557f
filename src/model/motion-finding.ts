import type { AxisLetter, InputName } from './machine.ts';
import type { SeparatorName, SituationName } from './seek-situations.ts';
import type { Mm } from './units.ts';

/** What the motion of an axis showed. */
export interface MotionFact {
  readonly axis: AxisLetter;
  /** Everything it can have been, as far as it could be told apart; empty where the motion itself says enough. */
  readonly candidates: readonly SituationName[];
  /** What would tell these apart. */
  readonly apart: readonly SeparatorName[];
  readonly input?: InputName | undefined;
  /** How far too far, mm or degrees. */
  readonly by?: Mm | undefined;
}

export const motionKinds = [
  'heads-away',
  'heads-for-work',
  'mirrored',
  'turned',
  'wrong-switch',
  'pressed-at-start',
  'zeroed-in-place',
  'zero-not-set',
  'no-reversal',
  'does-not-clear',
  'no-trip',
  'inferred-trip',
  'overruns',
  'reference-lost',
  'not-acted-on',
  'axis-order',
  'crawls',
  'blocked-elsewhere',
  'gantry',
  'ends-in-fault',
  'slow-not-slower',
  'turns-one-way',
  'other-axis-moves',
  'scattered-trips',
] as const;
export type MotionKind = (typeof motionKinds)[number];
export type MotionFinding = {
  readonly [Kind in MotionKind]: MotionFact & { readonly kind: Kind };
}[MotionKind];
