import type { Finding } from '../../model/finding.ts';
import type { Reading } from '../../model/reading.ts';
import type { CheckName, Verdict } from '../../model/verdict.ts';
import { silenceIsGap } from '../limits.ts';
import { statusOf } from './status.ts';

/** Counts what went wrong with the stream itself while a check ran; noted beside the verdicts, it changes none of them. */
export class StreamNotes {
  private gaps = 0;
  private lost = 0;
  private unreadable = 0;
  private restarts = 0;
  /** Not a number where there is none. */
  private lastReport = Number.NaN;
  private afterOpening = true;
  private inDoubt = 0;

  take(reading: Reading): void {
    if (reading.kind === 'gap') {
      this.lastReport = Number.NaN;
      if (reading.why === 'lost-port' || reading.why === 'declaration-changed') this.gaps++;
      if (reading.why === 'controller-restarted') {
        this.restarts++;
        // Its first report was not believed until a second agreed: that is the restart itself, not a damaged line.
        this.unreadable = Math.max(0, this.unreadable - this.inDoubt);
      }
      this.inDoubt = 0;
      this.afterOpening = reading.why === 'opened';
      return;
    }
    /** A port is opened in the middle of a line: its first fragment is nobody's fault. */
    if (reading.kind === 'unreadable' && !this.afterOpening) this.unreadable++;
    if (reading.kind === 'unreadable' && reading.why === 'out-of-step') this.inDoubt = 1;
    else if (reading.kind !== 'declared') this.inDoubt = 0;
    if (reading.kind === 'status') {
      if (reading.arrived - this.lastReport > silenceIsGap) this.gaps++;
      this.lastReport = reading.arrived;
    }
    if ('lost' in reading) this.lost += reading.lost;
    this.afterOpening = false;
  }

  /** The note for the check that just ended, if there is anything to note; counting begins anew. */
  verdict(check: CheckName): readonly Verdict[] {
    const { gaps, lost, unreadable, restarts } = this;
    this.gaps = this.lost = this.unreadable = this.restarts = 0;
    const findings: Finding[] = [];
    if (restarts > 0) findings.push({ kind: 'controller-restarted', times: restarts });
    if (gaps + lost + unreadable > 0) findings.push({ kind: 'stream-gaps', gaps, lost, unreadable });
    if (findings.length === 0) return [];
    return [
      {
        check,
        subject: 'stream',
        status: statusOf(findings),
        evidence: 'commanded',
        findings,
        missing: [],
        facts: {},
        traces: [],
      },
    ];
  }
}
