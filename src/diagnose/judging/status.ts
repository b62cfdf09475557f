import { type Finding, weightOf } from '../../model/finding.ts';
import type { EvidenceLevel, Missing, Status, Verdict } from '../../model/verdict.ts';

/** The status that findings alone leave: a fault fails, a limitation limits, notes change nothing. */
export function statusOf(findings: readonly Finding[]): Status {
  const weights = findings.map(({ kind }) => weightOf[kind]);
  if (weights.includes('fault')) return 'failed';
  return weights.includes('limitation') ? 'limited' : 'proved';
}

/** What was not even tried is not tested; what was tried and gave no evidence is inconclusive. */
const notTested: readonly Missing[] = [
  'stopped',
  'skipped',
  'cannot',
  'motors-not-off',
  'not-propped',
  'not-confirmed',
  'out-of-reach',
  'voltage-unknown',
  'voltage-too-high',
  'plug-not-confirmed',
  'not-mended',
  'stop-not-proved',
  'no-hard-wired-stop',
  'input-unproved',
  'motors-not-on',
  'way-not-free',
  'no-home-switch',
  'seek-not-proved',
  'position-not-reported',
  'no-such-check-yet',
];

export const statusWithout = (missing: Missing): Status =>
  notTested.includes(missing) ? 'not-tested' : 'inconclusive';

/** A verdict that lacks its evidence. */
export function withoutEvidence(
  of: Pick<Verdict, 'check' | 'subject'>,
  missing: Missing,
  rest: Partial<Pick<Verdict, 'evidence' | 'findings' | 'facts' | 'traces'>> = {},
): Verdict {
  return {
    ...of,
    status: statusWithout(missing),
    evidence: rest.evidence ?? 'configured',
    findings: rest.findings ?? [],
    missing: [missing],
    facts: rest.facts ?? {},
    traces: rest.traces ?? [],
  };
}

/** How strongly n presses speak: three in three asks are a repetition, fewer an edge, none only what the person said. */
export function evidenceOfPresses(answered: number, confirmed: boolean): EvidenceLevel {
  if (answered >= 3) return 'repeated';
  if (answered >= 1) return 'edge';
  return confirmed ? 'told' : 'commanded';
}
