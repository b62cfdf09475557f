import type { LimitChange, LimitFact, LimitIssue } from '../../model/limits-finding.ts';

/** A condition of the envelope that does not hold: on which axis and side, by how much, and what would mend it. */
export interface EnvelopeIssue extends Omit<LimitFact, 'issue'> {
  readonly kind: LimitIssue;
}

/** A number to set; `from` undefined where it is not known. */
export type Change = LimitChange;
export type EnvelopeIssueKind = LimitIssue;
