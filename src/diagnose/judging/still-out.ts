import type { OutItem } from '../../model/session-facts.ts';
import type { Verdict } from '../../model/verdict.ts';

/** While anything hangs unplugged nothing is proved: the machine judged is not the machine that will run. */
export function cappedWhileOut(verdict: Verdict, register: readonly OutItem[]): Verdict {
  if (register.length === 0 || verdict.status !== 'proved') return verdict;
  return {
    ...verdict,
    status: 'limited',
    findings: [...verdict.findings, { kind: 'still-out', what: register }],
  };
}
