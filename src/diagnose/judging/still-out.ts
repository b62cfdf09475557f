import type { Subject } from '../../model/machine.ts';
import type { OutItem } from '../../model/session-facts.ts';
import type { Verdict } from '../../model/verdict.ts';

/**
 * While anything hangs unplugged nothing is proved: the machine judged is not the machine that will run. What was proved of the
 * loose plug's own subjects (`loose`) is taken back, everything else is proved within that limitation only.
 */
export function whileOut(verdict: Verdict, out: readonly OutItem[], loose: ReadonlySet<Subject>): Verdict {
  if (out.length === 0 || verdict.status !== 'proved' || verdict.subject === 'stream') return verdict;
  const findings = [...verdict.findings, { kind: 'still-out', what: out } as const];
  return loose.has(verdict.subject)
    ? { ...verdict, status: 'inconclusive', missing: ['replug'], findings }
    : { ...verdict, status: 'limited', findings };
}
