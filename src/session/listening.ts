import type { Reading } from '../model/reading.ts';
import type { Source, SourceEvent } from '../model/source.ts';
import { type Millis, ms } from '../model/units.ts';
import { writeRequest } from '../transport/stream/native-writer.ts';
import type { Recorder } from './recorder.ts';
import { bytesOf, Requesting } from './requesting.ts';
import type { SessionClock } from './session-clock.ts';
import type { StreamReader } from './stream-reader.ts';

/** How long a controller gets to declare itself before it is asked to. */
const declarationExpected = ms(1000);

export interface ListeningEvents {
  /** What one capture entry said; `line` is what was received, as it came. */
  heard(readings: readonly Reading[], line: string | undefined): void;
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
  private readonly entriesOf: ReturnType<StreamReader['hearing']>;
  private openedAt: Millis | undefined;
  private requested = false;
  private closed = false;
  private readonly requesting: Requesting;

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
    const { description } = reader;
    this.entriesOf = reader.hearing(source.port);
    this.requesting = new Requesting({
      request: description?.request,
      isMoving: () => reader.isMoving,
      after: (delay, then) => clock.after(delay, then),
      write: (text) => {
        source.write(bytesOf(text));
        recorder.entry({ kind: 'tx', at: clock.now(), text });
      },
    });
  }

  open(): Promise<void> {
    return this.source.open((event) => this.take(event));
  }

  close(): Promise<void> {
    this.closed = true;
    this.requesting.end();
    return this.source.close();
  }

  private take(event: SourceEvent): void {
    const at = this.clock.of(event.arrived);
    for (const entry of this.entriesOf({ ...event, arrived: at })) {
      if (this.closed) return;
      const line = entry.kind === 'rx' ? entry.text : undefined;
      this.events.heard(this.recorder.entry(entry), line);
    }
    if (event.kind === 'opened') {
      this.openedAt = at;
      this.requested = false;
      this.events.opened();
      if (!this.closed) this.requesting.begin();
    } else if (event.kind === 'lost') {
      this.openedAt = undefined;
      this.requesting.end();
      this.events.lost();
    } else this.requestOnce(at);
  }

  /** Writes what the person typed and agreed to; false where the port is not open. */
  writeOwn(text: string): boolean {
    if (this.closed || this.openedAt === undefined) return false;
    this.source.write(bytesOf(text));
    this.recorder.entry({ kind: 'tx', at: this.clock.now(), text });
    this.events.sent(text);
    return true;
  }

  /** The person answered: what she was asked for is over. */
  answered(): void {
    this.reader.standsStill();
    this.requesting.standsStill();
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
