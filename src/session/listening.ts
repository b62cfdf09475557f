import type { Reading } from '../model/reading.ts';
import type { Source, SourceEvent } from '../model/source.ts';
import { type Millis, ms } from '../model/units.ts';
import { hearing } from '../transport/hearing.ts';
import { writeRequest } from '../transport/stream/native-writer.ts';
import type { Recorder } from './recorder.ts';
import type { SessionClock } from './session-clock.ts';
import type { StreamReader } from './stream-reader.ts';

/** How long a controller gets to declare itself before it is asked to. */
const declarationExpected = ms(1000);

export interface ListeningEvents {
  /** What one capture entry said. */
  heard(readings: readonly Reading[]): void;
  opened(): void;
  lost(): void;
  sent(text: string): void;
}

/** The port's side of a session: bytes to recorded lines to readings, and the one request that law 1 allows. */
export class Listening {
  private readonly source: Source;
  private readonly recorder: Recorder;
  private readonly reader: StreamReader;
  private readonly events: ListeningEvents;
  private readonly clock: SessionClock;
  private readonly entriesOf: ReturnType<typeof hearing>;
  private openedAt: Millis | undefined;
  private requested = false;
  private closed = false;

  constructor(
    source: Source,
    recorder: Recorder,
    reader: StreamReader,
    clock: SessionClock,
    events: ListeningEvents,
  ) {
    this.source = source;
    this.recorder = recorder;
    this.reader = reader;
    this.events = events;
    this.clock = clock;
    this.entriesOf = hearing(source.port);
  }

  open(): Promise<void> {
    return this.source.open((event) => this.take(event));
  }

  close(): Promise<void> {
    this.closed = true;
    return this.source.close();
  }

  private take(event: SourceEvent): void {
    const at = this.clock.of(event.arrived);
    for (const entry of this.entriesOf({ ...event, arrived: at })) {
      if (this.closed) return;
      this.events.heard(this.recorder.entry(entry));
    }
    if (event.kind === 'opened') {
      this.openedAt = at;
      this.requested = false;
      this.events.opened();
    } else if (event.kind === 'lost') {
      this.openedAt = undefined;
      this.events.lost();
    } else this.requestOnce(at);
  }

  private requestOnce(at: Millis): void {
    if (this.closed || this.requested || this.openedAt === undefined) return;
    if (at - this.openedAt < declarationExpected || !this.reader.mayRequest) return;
    this.requested = true;
    const request = writeRequest();
    this.source.write(new TextEncoder().encode(request));
    this.recorder.entry({ kind: 'tx', at, text: request });
    this.events.sent(request);
  }
}
