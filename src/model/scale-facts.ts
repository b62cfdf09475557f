import type { AxisLetter } from './machine.ts';
import type { AxisUnit, Way } from './motion-facts.ts';
import type { Mm } from './units.ts';

/** Commanded against measured lengths of one axis. */
export interface ScaleFacts {
  readonly axis: AxisLetter;
  readonly unit: AxisUnit;
  readonly runs: readonly ScaleMeasurement[];
  /** Measured over commanded, backlash and the holding of the tape apart. */
  readonly ratio: number;
  /** How well the ratio is known, as a share. */
  readonly doubt: number;
  /** The error of scale that is accepted, as a share. */
  readonly accepted: number;
  readonly offset: Mm;
  readonly backlash?: Mm | undefined;
  readonly hasBacklash?: boolean | undefined;
  readonly byWay?: { readonly positive: number; readonly negative: number } | undefined;
  readonly waysDiffer?: boolean | undefined;
  /** The largest distance of a measurement from the fit. */
  readonly worst: Mm;
  readonly says: 'true' | 'off' | 'too-coarse';
  /** Likeliest first. */
  readonly causes: readonly ScaleCause[];
  /** Steps per unit as set now, and as they should be. */
  readonly steps?: number | undefined;
  readonly correctedSteps?: number | undefined;
}

export interface ScaleMeasurement {
  readonly commanded: Mm;
  readonly measured: Mm;
  readonly way: Way;
  readonly afterReversal: boolean;
}

/** A mechanical or setting mistake that multiplies every length by the same number. */
export type ScaleCause =
  | { readonly kind: 'microsteps'; readonly set: number; readonly real: number }
  | { readonly kind: 'screw-starts'; readonly starts: number }
  | { readonly kind: 'lead'; readonly set: number; readonly real: number }
  | { readonly kind: 'diameter-for-radius' }
  | { readonly kind: 'step-angle' }
  | { readonly kind: 'inch-for-mm' }
  | { readonly kind: 'inch-pitch'; readonly set: number; readonly real: number }
  | { readonly kind: 'forgotten-pi' }
  | { readonly kind: 'teeth'; readonly set: number; readonly real: number }
  | { readonly kind: 'gear'; readonly numerator: number; readonly denominator: number };
