import type { Reading } from '../model/reading.ts';
import type { Source, SourceEvent } from '../model/source.ts';
import { type Millis, ms } from '../model/units.ts';
import { hearing } from '../transport/hearing.ts';
import { lineSplitter } from '../transport/line-splitter.ts';
import { writeRequest } from '../transport/stream/native-writer.ts';
import { longestLine } from '../transport/stream/shapes/fields.ts';
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
  private nextAsk: () => void = () => {};
  /** Something moved when last heard of; only the person can say that it stands still again. */
  private paused = false;
  private heardSinceAsked = false;

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
    this.entriesOf = description ? hearing(source.port, lineSplitter(longestLine)) : hearing(source.port);
  }

  open(): Promise<void> {
    return this.source.open((event) => this.take(event));
  }

  close(): Promise<void> {
    this.closed = true;
    this.nextAsk();
    return this.source.close();
  }

  private take(event: SourceEvent): void {
    const at = this.clock.of(event.arrived);
    for (const entry of this.entriesOf({ ...event, arrived: at })) {
      if (this.closed) return;
      const readings = this.recorder.entry(entry);
      this.heardSinceAsked ||= readings.length > 0;
      this.events.heard(readings);
    }
    if (event.kind === 'opened') {
      this.openedAt = at;
      this.requested = false;
      this.events.opened();
      this.askAgain();
    } else if (event.kind === 'lost') {
      this.openedAt = undefined;
      this.nextAsk();
      this.events.lost();
    } else this.requestOnce(at);
  }

  /** The person answered: what she was asked for is over. */
  answered(): void {
    this.paused = false;
  }

  /** The request of a description, which the person allowed: never while something moves. */
  private askAgain(): void {
    const request = this.reader.description?.request;
    if (!request || this.closed || this.openedAt === undefined) return;
    this.paused ||= this.reader.isMoving && this.heardSinceAsked;
    this.heardSinceAsked = false;
    if (!this.paused) {
      this.source.write(Uint8Array.from(request.send, (character) => character.charCodeAt(0)));
      this.recorder.entry({ kind: 'tx', at: this.clock.now(), text: request.send });
    }
    this.nextAsk = this.clock.after(ms(request.every), () => this.askAgain());
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
