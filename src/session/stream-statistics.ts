import type { Reading, StatusReading, UnreadableWhy } from '../model/reading.ts';
import type { StreamFacts } from '../model/session-facts.ts';
import { ms } from '../model/units.ts';
import type { Run } from '../transport/stream/decoder.ts';
import { longestPace } from '../transport/stream/quick-run.ts';

/** Counts over a whole session in bounded memory: periods are counted in tenths of a millisecond. */
export class StreamStatistics {
  /** How often each whole period in ms came within runs. */
  readonly paces = new Uint32Array(longestPace + 1);
  private readonly periods = new Map<number, number>();
  /** Segment and time of the report before; -1 where there is none. */
  private segment = -1;
  private at = 0;
  private reports = 0;
  private lost = 0;
  private gaps = 0;
  private restarts = 0;
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

  /** Statuses one behind the other; the paces of all behind the first stand in `paces` already. */
  run(run: Run): void {
    this.report(run);
    this.reports += run.further;
    this.at = run.lastAt;
  }

  facts(lines: number): StreamFacts {
    const { inputs, axes, reports, lost, gaps, restarts, unreadable } = this;
    const counted = this.counted();
    const longest = counted.at(-1);
    return {
      inputs,
      axes,
      lines,
      reports,
      median: longest && ms(middle(counted) / 10),
      longest: longest && ms(longest.tenths / 10),
      lost,
      gaps,
      restarts,
      unreadable: { ...unreadable },
    };
  }

  private report({ segment, at, lost }: Pick<StatusReading, 'segment' | 'at' | 'lost'>): void {
    this.reports++;
    this.lost += lost;
    if (this.segment === segment) {
      const tenths = Math.round((at - this.at) * 10);
      this.periods.set(tenths, (this.periods.get(tenths) ?? 0) + 1);
    }
    this.segment = segment;
    this.at = at;
  }

  /** How often each period came, the shortest first. */
  private counted(): readonly Counted[] {
    const all = new Map(this.periods);
    for (const [pace, count] of this.paces.entries())
      if (count > 0) all.set(pace * 10, (all.get(pace * 10) ?? 0) + count);
    return [...all].map(([tenths, count]) => ({ tenths, count })).sort((a, b) => a.tenths - b.tenths);
  }
}

interface Counted {
  readonly tenths: number;
  readonly count: number;
}

/** The period that half of all do not exceed, in tenths of a millisecond. */
function middle(counted: readonly Counted[]): number {
  const total = counted.reduce((sum, { count }) => sum + count, 0);
  let passed = 0;
  for (const { tenths, count } of counted) {
    passed += count;
    if (passed * 2 >= total) return tenths;
  }
  return 0;
}
