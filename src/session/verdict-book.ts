import type { Verdict } from '../model/verdict.ts';
import type { Face } from './operator.ts';
import { type Retraced, verdictKey } from './retrace.ts';

/** The verdicts of a session: the last of each check and subject, shown as they come and as things then are. */
export class VerdictBook {
  private readonly verdicts = new Map<string, Verdict>();
  private readonly shown = new Map<string, Verdict>();
  private readonly face: Face;
  private readonly keep: (verdicts: readonly Verdict[]) => void;
  private readonly asThingsAre: (verdict: Verdict) => Verdict;

  /** `asThingsAre`: what may be told of a verdict at this moment; called anew whenever one is shown. */
  constructor(
    face: Face,
    keep: (verdicts: readonly Verdict[]) => void,
    asThingsAre: (verdict: Verdict) => Verdict,
  ) {
    this.face = face;
    this.keep = keep;
    this.asThingsAre = asThingsAre;
  }

  /** Verdicts of the session so far; what the journal had not yet come to hold is given now. */
  restore(past: Retraced): void {
    for (const verdict of past.verdicts) {
      if (past.journalled.has(verdictKey(verdict))) this.enter(verdict, true);
      else this.give([verdict]);
    }
  }

  /** Those that come together are kept together, before any of them is shown. */
  give(verdicts: readonly Verdict[]): void {
    this.keep(verdicts.map((verdict) => this.asThingsAre(verdict)));
    for (const verdict of verdicts) this.enter(verdict, false);
  }

  /** For want of evidence: not kept in the journal, so that a resumed session can still give better. */
  giveForNow(verdicts: readonly Verdict[]): void {
    for (const verdict of verdicts) this.enter(verdict, false);
  }

  /** At the end: those that things as they are now put another way are shown once more. Returns all. */
  settled(): readonly Verdict[] {
    return [...this.verdicts].map(([key, verdict]) => {
      const now = this.asThingsAre(verdict);
      if (this.shown.get(key)?.status !== now.status) this.show(now, false);
      return now;
    });
  }

  private enter(verdict: Verdict, restored: boolean): void {
    this.verdicts.set(verdictKey(verdict), verdict);
    this.show(this.asThingsAre(verdict), restored);
  }

  private show(verdict: Verdict, restored: boolean): void {
    this.shown.set(verdictKey(verdict), verdict);
    const { subject, facts } = verdict;
    this.face.show({ kind: 'verdict', verdict, restored });
    if (facts.cause) this.face.show({ kind: 'cause', subject, cause: facts.cause, restored });
  }
}
