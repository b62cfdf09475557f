import type { Verdict } from '../model/verdict.ts';
import type { Face } from './operator.ts';
import { type Retraced, verdictKey } from './retrace.ts';

/** The verdicts of a session: the last of each check and subject, shown as they come. */
export class VerdictBook {
  private readonly verdicts = new Map<string, Verdict>();
  private readonly face: Face;
  private readonly keep: (verdict: Verdict) => void;

  constructor(face: Face, keep: (verdict: Verdict) => void) {
    this.face = face;
    this.keep = keep;
  }

  /** Verdicts of the session so far; what the journal had not yet come to hold is given now. */
  restore(past: Retraced): void {
    for (const verdict of past.verdicts) {
      if (past.journalled.has(verdictKey(verdict))) this.enter(verdict, true);
      else this.give([verdict]);
    }
  }

  give(verdicts: readonly Verdict[]): void {
    for (const verdict of verdicts) {
      this.keep(verdict);
      this.enter(verdict, false);
    }
  }

  /** For want of evidence, or taken back at the end: not kept in the journal, so that a resumed session can still give better. */
  giveForNow(verdicts: readonly Verdict[]): void {
    for (const verdict of verdicts) this.enter(verdict, false);
  }

  all(): readonly Verdict[] {
    return [...this.verdicts.values()];
  }

  private enter(verdict: Verdict, restored: boolean): void {
    this.verdicts.set(verdictKey(verdict), verdict);
    this.face.show({ kind: 'verdict', verdict, restored });
  }
}
