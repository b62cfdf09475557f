import type { CheckName } from '../../model/check-name.ts';
import type { Subject } from '../../model/machine.ts';
import type { Verdict } from '../../model/verdict.ts';
import { notReached } from '../../words/verdict-words.ts';

/** Verdicts that say nothing but that the session ended before them: gathered, to be told in one line for the lot. */
export class NotReached {
  private readonly checks = new Map<CheckName, Subject[]>();

  /** Whether it was one of them, and is told later. */
  take(verdict: Verdict): boolean {
    if (!isNotReached(verdict)) return false;
    const { check, subject } = verdict;
    this.checks.set(check, [...(this.checks.get(check) ?? []), subject]);
    return true;
  }

  /** What was gathered since the last time, as at most one line. */
  told(): readonly string[] {
    const lot = [...this.checks];
    this.checks.clear();
    return lot.length === 0 ? [] : [notReached(lot)];
  }
}

export const isNotReached = ({ findings, missing }: Verdict): boolean =>
  findings.length === 0 && missing.length === 1 && missing[0] === 'stopped';
