import type { Finding, MotionFact, MotionKind } from '../../model/finding.ts';
import type { AxisLetter } from '../../model/machine.ts';

/** A finding of any of the kinds that motion comes to: they all carry the same facts. */
export const motionFinding = (kind: MotionKind, fact: MotionFact): Finding =>
  ({ kind, ...fact }) as Extract<Finding, { readonly kind: MotionKind }>;

/** The zero of an earlier homing no longer holds. */
export const referenceLost = (axis: AxisLetter): Finding =>
  motionFinding('reference-lost', { axis, candidates: ['reference-lost'], apart: [] });
