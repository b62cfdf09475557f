import { judgeSoak } from '../diagnose/soak/judge.ts';
import { TripCounter } from '../diagnose/soak/trips.ts';
import type { Reading } from '../model/reading.ts';
import type { StreamFacts } from '../model/session-facts.ts';
import type { Source, Timekeeper } from '../model/source.ts';
import type { StreamDescription } from '../model/stream-description.ts';
import { type Millis, ms } from '../model/units.ts';
import type { Verdict } from '../model/verdict.ts';
import { type CaptureEntry, toMicrosecond } from '../transport/capture.ts';
import { EdgeListener } from './heard.ts';
import type { Heard } from './operator.ts';
import { bytesOf, Requesting } from './requesting.ts';
import { StreamReader } from './stream-reader.ts';
import { StreamStatistics } from './stream-statistics.ts';

export interface WatchEvents {
  heard(change: Heard): void;
  reading(reading: Reading): void;
  lost(why: string): void;
  back(): void;
}

/**
 * Listens to a stream and does nothing else: it asks nobody and judges nothing on its way. It writes no byte to the port but the
 * request of a description, which the person let pass.
 */
export class Watch {
  private readonly source: Source;
  private readonly time: Timekeeper;
  private readonly events: WatchEvents;
  private readonly reader: StreamReader;
  private readonly requesting: Requesting;
  private readonly edges = new EdgeListener();
  private readonly statistics = new StreamStatistics();
  private readonly trips = new TripCounter();
  private readonly entriesOf: ReturnType<StreamReader['hearing']>;
  private readonly began: Millis;
  private lines = 0;
  private wasLost = false;

  /** `description` left out: the native status sentences. */
  constructor(source: Source, time: Timekeeper, events: WatchEvents, description?: StreamDescription) {
    this.source = source;
    this.time = time;
    this.events = events;
    this.reader = new StreamReader(description);
    this.entriesOf = this.reader.hearing(source.port);
    this.began = time.now();
    this.requesting = new Requesting({
      request: description?.request,
      isMoving: () => this.reader.isMoving,
      after: (delay, then) => time.after(delay, then),
      write: (text) => source.write(bytesOf(text)),
    });
  }

  /** Rejects with a ToolError where the port cannot be opened; later losses are told and waited out. */
  open(): Promise<void> {
    return this.source.open((event) => {
      if (event.kind === 'lost') this.events.lost(event.why);
      if (event.kind === 'opened' && this.wasLost) this.events.back();
      this.wasLost ||= event.kind === 'lost';
      for (const entry of this.entriesOf({ ...event, arrived: this.since(event.arrived) })) this.take(entry);
      if (event.kind === 'opened') this.requesting.begin();
      if (event.kind === 'lost') this.requesting.end();
    });
  }

  close(): Promise<void> {
    this.requesting.end();
    return this.source.close();
  }

  /** Since the watch began. */
  get now(): Millis {
    return this.since(this.time.now());
  }

  /** The person says that nothing moves: the request may be written again. */
  standsStill(): void {
    this.reader.standsStill();
    this.requesting.standsStill();
  }

  /** How often the request was written. */
  get requests(): number {
    return this.requesting.times;
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
