import type { Finding } from '../../model/finding.ts';
import type { Verdict } from '../../model/verdict.ts';
import { statusOf } from './status.ts';

/** Two axes that both go the other way turn the part by half a turn and mirror nothing: what looked mirrored on each is said so. */
export function turnedNotMirrored(
  verdicts: readonly Verdict[],
  frame: Verdict | undefined,
): readonly Verdict[] {
  if (frame?.facts.frame?.says !== 'turned') return verdicts;
  return verdicts.map((verdict) => {
    if (!verdict.findings.some(({ kind }) => kind === 'mirrored')) return verdict;
    const findings = verdict.findings.map(
      (each): Finding => (each.kind === 'mirrored' ? { ...each, kind: 'turned' } : each),
    );
    return { ...verdict, findings, status: statusOf(findings) };
  });
}
