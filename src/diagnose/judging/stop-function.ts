import type { Answer } from '../../model/ask.ts';
import type { Finding } from '../../model/finding.ts';
import type { InputName, Subject } from '../../model/machine.ts';
import type { Missing, Trace, Verdict } from '../../model/verdict.ts';
import { statusOf, withoutEvidence } from './status.ts';

export interface StopEvidence {
  readonly subject: Subject;
  readonly target: InputName;
  readonly missing: Missing | undefined;
  /** The reported input moved with the button. */
  readonly followed: boolean | undefined;
  /** What showed the person that the drives lost power. */
  readonly power: Answer | undefined;
  readonly restarted: boolean | undefined;
  readonly traces: readonly Trace[];
}

const shown = ['knob-free', 'lamp', 'meter'] as const;

/** Status and function are two questions; the verdict is no stronger than what the person saw of the power, so its evidence is told. */
export function judgeStop({
  subject,
  target,
  missing,
  followed,
  power,
  restarted,
  traces,
}: StopEvidence): Verdict {
  const of = { check: 'stop', subject } as const;
  if (missing) return withoutEvidence(of, missing, { traces });
  const findings: Finding[] = [];
  if (!followed) findings.push({ kind: 'status-not-following', input: target });
  if (power === 'did-not') findings.push({ kind: 'power-stays-on' });
  if (restarted) findings.push({ kind: 'restarts' });
  const powerShownBy = shown.find((each) => each === power);
  const facts = powerShownBy ? { powerShownBy } : {};
  const verdict: Verdict = {
    ...of,
    status: statusOf(findings),
    evidence: 'told',
    findings,
    missing: [],
    facts,
    traces,
  };
  if (verdict.status === 'failed') return verdict;
  if (!powerShownBy) return { ...verdict, status: 'inconclusive', missing: ['power-not-looked-at'] };
  if (restarted === undefined) return { ...verdict, status: 'inconclusive', missing: ['not-confirmed'] };
  return verdict;
}
