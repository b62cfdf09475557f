import type { Mm } from '../../model/units.ts';
import { type LikelyCause, nearEnough, scaleCauses } from './causes.ts';
import { fitScale, type ScaleFit, type ScaleRun } from './fit.ts';

export interface ScaleQuestion {
  readonly runs: readonly ScaleRun[];
  /** Steps per mm, or per degree, as set now. */
  readonly stepsPerUnit: number | undefined;
  /** How well the tape or caliper was read, mm. */
  readonly readingError: Mm;
  /** The error of scale that is accepted, as a share: 0.001 router, 0.0002 mill (common practice, no source). */
  readonly accepted: number;
}

export interface ScaleJudgement {
  readonly fit: ScaleFit;
  /** How well the ratio is known from these lengths, as a share. */
  readonly doubt: number;
  readonly says: 'true' | 'off' | 'too-coarse';
  /** Likeliest first; empty: no whole-number mistake fits. */
  readonly causes: readonly LikelyCause[];
  readonly correctedSteps: number | undefined;
  /** Larger than the reading error could have made it. */
  readonly hasBacklash: boolean | undefined;
  /** The two ways differ by more than the readings can: something slips or steps are lost. */
  readonly waysDiffer: boolean | undefined;
}

/** Scale and backlash of one axis from commanded and measured lengths; undefined where the lengths do not determine them: two are needed. */
export function judgeScale({
  runs,
  stepsPerUnit,
  readingError,
  accepted,
}: ScaleQuestion): ScaleJudgement | undefined {
  const fit = fitScale(runs);
  if (!fit || !(fit.ratio > 0)) return undefined;
  const lengths = runs.map(({ commanded }) => commanded);
  // Two readings enter a length, and the ratio stands on the difference of the lengths.
  const doubt = (2 * readingError) / (Math.max(...lengths) - Math.min(...lengths));
  const off = Math.abs(fit.ratio - 1);
  const says = off - doubt > accepted ? 'off' : off + doubt <= accepted ? 'true' : 'too-coarse';
  return {
    fit,
    doubt,
    says,
    causes: says === 'off' ? scaleCauses(fit.ratio, Math.max(nearEnough, Math.min(doubt, mostDoubt))) : [],
    correctedSteps: stepsPerUnit === undefined ? undefined : correctedSteps(stepsPerUnit, fit.ratio),
    hasBacklash: fit.backlash === undefined ? undefined : fit.backlash > 2 * readingError,
    waysDiffer: fit.byWay && Math.abs(fit.byWay.positive - fit.byWay.negative) > 2 * doubt,
  };
}

/** Beyond this share a ratio fits nearly every fraction, and names none. */
const mostDoubt = 0.01;

/** Steps per unit that make commanded and measured agree: what is set, over the ratio measured ÷ commanded. */
export const correctedSteps = (set: number, ratio: number): number => set / ratio;
