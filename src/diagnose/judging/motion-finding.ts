import type { Finding, MotionFact, MotionKind } from '../../model/finding.ts';

/** A finding of any of the kinds that motion comes to: they all carry the same facts. */
export const motionFinding = (kind: MotionKind, fact: MotionFact): Finding =>
  ({ kind, ...fact }) as Extract<Finding, { readonly kind: MotionKind }>;
