import type { Status, Verdict } from '../model/verdict.ts';

/** 0 all well, 1 a fault or limitation, 2 evidence missing or the session stopped (it can be resumed). Nothing judged is not all well. 3 is kept for the tool's own failure. */
export function exitCodeFor(verdicts: readonly Pick<Verdict, 'status'>[], stopped: boolean): 0 | 1 | 2 {
  const has = (...which: readonly Status[]) => verdicts.some(({ status }) => which.includes(status));
  if (has('failed', 'limited')) return 1;
  return stopped || verdicts.length === 0 || has('inconclusive', 'not-tested') ? 2 : 0;
}
