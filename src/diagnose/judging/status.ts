import { type Finding, weightOf } from '../../model/finding.ts';
import type { EvidenceLevel, Missing, Status, Verdict } from '../../model/verdict.ts';

/** The status that findings alone leave: a fault fails, a limitation limits, notes change nothing. */
export function statusOf(findings: readonly Finding[]): Status {
  const weights = findings.map(({ kind }) => weightOf[kind]);
  if (weights.includes('fault')) return 'failed';
  return weights.includes('limitation') ? 'limited' : 'proved';
}

/** What was not even tried is not tested; what was tried and gave no evidence is inconclusive. */
const statusOfMissing = {
  stopped: 'not-tested',
  skipped: 'not-tested',
  cannot: 'not-tested',
  'not-sure': 'inconclusive',
  'no-answer-given': 'inconclusive',
  'motors-not-off': 'not-tested',
  'not-propped': 'not-tested',
  'not-confirmed': 'not-tested',
  'control-press': 'inconclusive',
  'settled-level': 'inconclusive',
  'press-after-replug': 'inconclusive',
  replug: 'inconclusive',
  'never-answered': 'inconclusive',
  'press-again': 'inconclusive',
  'rest-in-doubt': 'inconclusive',
  'input-not-reported': 'inconclusive',
  'stream-broke-off': 'inconclusive',
  'stream-too-slow': 'inconclusive',
  'out-of-reach': 'not-tested',
  'voltage-unknown': 'not-tested',
  'voltage-too-high': 'not-tested',
  'plug-not-confirmed': 'not-tested',
  'chain-open': 'inconclusive',
  'something-out': 'inconclusive',
  'power-not-looked-at': 'inconclusive',
  'watched-too-short': 'inconclusive',
  'no-hard-wired-stop': 'not-tested',
  'input-unproved': 'not-tested',
  'motors-not-on': 'not-tested',
  'way-not-free': 'not-tested',
  'no-home-switch': 'not-tested',
  'seek-not-proved': 'not-tested',
  'no-motion-seen': 'inconclusive',
  'motion-not-reported': 'inconclusive',
  'ended-by-another': 'inconclusive',
  'position-not-reported': 'not-tested',
  'direction-not-known': 'inconclusive',
  'not-told-apart': 'inconclusive',
  contradictory: 'inconclusive',
  'not-mended': 'not-tested',
  'stop-not-proved': 'not-tested',
  'circuit-not-declared': 'inconclusive',
  'soft-limits-unknown': 'inconclusive',
  'switch-places-unknown': 'inconclusive',
  'program-without-motion': 'inconclusive',
  'program-not-understood': 'inconclusive',
  'work-zero-unknown': 'inconclusive',
  'homing-not-shown': 'inconclusive',
  'too-few-runs': 'inconclusive',
  'too-coarse': 'inconclusive',
  'speeds-unknown': 'inconclusive',
  'room-unknown': 'inconclusive',
  'stop-not-seen': 'inconclusive',
  'lengths-missing': 'inconclusive',
} as const satisfies Record<Missing, Status>;

export const statusWithout = (missing: Missing): Status => statusOfMissing[missing];

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
