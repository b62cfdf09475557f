import type { Finding } from '../../model/finding.ts';
import { type InputName, switchOf } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import type { Verdict } from '../../model/verdict.ts';
import { statusOf } from './status.ts';

/**
 * Where one polarity setting serves all inputs, turning it for one turns it for all: the inputs that are right today and would be
 * wrong tomorrow are named beside each finding whose cure turns the setting, and an input that is reversed while others are right
 * cannot be cured by the setting at all.
 */
export function polarityShared(verdicts: readonly Verdict[], { machine }: Scene): readonly Verdict[] {
  if (machine.polarity !== 'one for all') return verdicts;
  const rightNow = (verdict: Verdict) =>
    verdict.facts.row?.by === 'active' && verdict.facts.row.bits.startsWith('01');
  const right = verdicts.filter(rightNow).flatMap((verdict) => inputOfVerdict(verdict) ?? []);
  const breaksFor = (own: InputName | undefined) => [...new Set(right)].filter((input) => input !== own);
  function inputOfVerdict({ facts, subject }: Verdict): InputName | undefined {
    return facts.answeredBy ?? switchOf(machine, subject)?.input;
  }
  return verdicts.map((verdict) => {
    const breaks = breaksFor(inputOfVerdict(verdict));
    const findings = verdict.findings.flatMap((finding): readonly Finding[] => {
      if (finding.kind === 'break-undetected') return [{ ...finding, breaks }];
      if (finding.kind !== 'polarity-reversed' || breaks.length === 0) return [finding];
      return [finding, { kind: 'polarity-shared', input: finding.input, breaks }];
    });
    return {
      ...verdict,
      findings,
      status: verdict.status === 'limited' ? statusOf(findings) : verdict.status,
    };
  });
}
