import type { Reading, UnreadableWhy } from '../model/reading.ts';
import type { StreamFacts } from '../model/session-facts.ts';
import { ms } from '../model/units.ts';
import type { Passing } from '../transport/stream/decoder.ts';

/** Counts over a whole session in bounded memory: periods are counted in tenths of a millisecond. */
export class StreamStatistics {
  private readonly periods = new Map<number, number>();
  /** Segment and time of the report before; -1 where there is none. */
  private segment = -1;
  private at = 0;
  private reports = 0;
  private lost = 0;
  private gaps = 0;
  private restarts = 0;
  private longest = 0;
  /** The present period and how often it came since it is that. */
  private tenths = 0;
  private count = 0;
  private readonly unreadable: Partial<Record<UnreadableWhy, number>> = {};
  private inputs: readonly string[] = [];
  private axes: readonly string[] = [];

  take(reading: Reading): void {
    switch (reading.kind) {
      case 'status':
        this.report(reading);
        break;
      case 'edge':
        this.lost += reading.lost;
        break;
      case 'declared':
        this.inputs = reading.inputs;
        this.axes = reading.axes;
        break;
      case 'gap':
        this.segment = -1;
        if (reading.why === 'controller-restarted') this.restarts++;
        else if (reading.why !== 'opened') this.gaps++;
        break;
      case 'unreadable':
        this.unreadable[reading.why] = (this.unreadable[reading.why] ?? 0) + 1;
        break;
    }
  }

  facts(lines: number): StreamFacts {
    this.keepCount();
    const { inputs, axes, reports, lost, gaps, restarts, unreadable } = this;
    const periods = [...this.periods.values()].reduce((total, count) => total + count, 0);
    return {
      inputs,
      axes,
      lines,
      reports,
      median: periods > 0 ? ms(this.middlePeriod(periods)) : undefined,
      longest: periods > 0 ? ms(this.longest) : undefined,
      lost,
      gaps,
      restarts,
      unreadable: { ...unreadable },
    };
  }

  /** A status, of which no more needs to be known. */
  report(passing: Passing): void {
    this.reports++;
    this.lost += passing.lost;
    const { segment, at } = this;
    this.segment = passing.segment;
    this.at = passing.at;
    if (segment !== passing.segment) return;
    const tenths = Math.round((passing.at - at) * 10);
    // Most often the period is the one before; a Map is asked only when it changes.
    if (tenths !== this.tenths) {
      this.keepCount();
      this.tenths = tenths;
      this.count = 0;
      this.longest = Math.max(this.longest, tenths / 10);
    }
    this.count++;
  }

  private keepCount(): void {
    if (this.count > 0) this.periods.set(this.tenths, (this.periods.get(this.tenths) ?? 0) + this.count);
    this.count = 0;
  }

  private middlePeriod(total: number): number {
    let passed = 0;
    for (const [tenths, count] of [...this.periods].sort(([a], [b]) => a - b)) {
      passed += count;
      if (passed * 2 >= total) return tenths / 10;
    }
    return 0;
  }
}
