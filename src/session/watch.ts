import { judgeSoak } from '../diagnose/soak/judge.ts';
import { TripCounter } from '../diagnose/soak/trips.ts';
import type { Reading } from '../model/reading.ts';
import type { StreamFacts } from '../model/session-facts.ts';
import type { Source, Timekeeper } from '../model/source.ts';
import { type Millis, ms } from '../model/units.ts';
import type { Verdict } from '../model/verdict.ts';
import { type CaptureEntry, toMicrosecond } from '../transport/capture.ts';
import { hearing } from '../transport/hearing.ts';
import { EdgeListener } from './heard.ts';
import type { Heard } from './operator.ts';
import { StreamReader } from './stream-reader.ts';
import { StreamStatistics } from './stream-statistics.ts';

export interface WatchEvents {
  heard(change: Heard): void;
  reading(reading: Reading): void;
  lost(why: string): void;
  back(): void;
}

/** Listens to a stream and does nothing else: it asks nobody, judges nothing on its way and writes no byte to the port. */
export class Watch {
  private readonly source: Source;
  private readonly time: Timekeeper;
  private readonly events: WatchEvents;
  private readonly reader = new StreamReader();
  private readonly edges = new EdgeListener();
  private readonly statistics = new StreamStatistics();
  private readonly trips = new TripCounter();
  private readonly entriesOf: (event: Parameters<ReturnType<typeof hearing>>[0]) => readonly CaptureEntry[];
  private readonly began: Millis;
  private lines = 0;
  private wasLost = false;

  constructor(source: Source, time: Timekeeper, events: WatchEvents) {
    this.source = source;
    this.time = time;
    this.events = events;
    this.entriesOf = hearing(source.port);
    this.began = time.now();
  }

  /** Rejects with a ToolError where the port cannot be opened; later losses are told and waited out. */
  open(): Promise<void> {
    return this.source.open((event) => {
      if (event.kind === 'lost') this.events.lost(event.why);
      if (event.kind === 'opened' && this.wasLost) this.events.back();
      this.wasLost ||= event.kind === 'lost';
      for (const entry of this.entriesOf({ ...event, arrived: this.since(event.arrived) })) this.take(entry);
    });
  }

  close(): Promise<void> {
    return this.source.close();
  }

  /** Since the watch began. */
  get now(): Millis {
    return this.since(this.time.now());
  }

  facts(): StreamFacts {
    return this.statistics.facts(this.lines);
  }

  /** One verdict an input, as far as it has been watched. */
  soak(): readonly Verdict[] {
    return judgeSoak(this.trips);
  }

  private take(entry: CaptureEntry): void {
    this.lines++;
    for (const reading of this.reader.entry(entry)) {
      this.statistics.take(reading);
      this.trips.take(reading);
      this.events.reading(reading);
      for (const change of this.edges.take(reading)) this.events.heard(change);
    }
  }

  private since(moment: Millis): Millis {
    return toMicrosecond(ms(moment - this.began));
  }
}
