import type { Reading } from '../model/reading.ts';
import type { Source, SourceEvent } from '../model/source.ts';
import { type Millis, ms } from '../model/units.ts';
import { LineSplitter } from '../transport/line-splitter.ts';
import { requestLine } from '../transport/stream/native-sentences.ts';
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
  private splitter = new LineSplitter();
  private openedAt: Millis | undefined;
  private requested = false;

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
  }

  open(): Promise<void> {
    return this.source.open((event) => this.take(event));
  }

  close(): Promise<void> {
    return this.source.close();
  }

  private take(event: SourceEvent): void {
    const at = this.clock.of(event.arrived);
    switch (event.kind) {
      case 'opened':
        this.splitter = new LineSplitter();
        this.openedAt = at;
        this.requested = false;
        this.events.heard(this.recorder.entry({ kind: 'opening', at, text: this.source.port }));
        this.events.opened();
        break;
      case 'bytes':
        for (const line of this.splitter.push(event.bytes, at))
          this.events.heard(this.recorder.entry({ kind: 'rx', at, text: line.text, cut: line.cut }));
        this.requestOnce(at);
        break;
      case 'lost':
        for (const line of this.splitter.flush(at))
          this.events.heard(this.recorder.entry({ kind: 'rx', at, text: line.text, cut: line.cut }));
        this.openedAt = undefined;
        this.events.heard(this.recorder.entry({ kind: 'gap', at, text: event.why }));
        this.events.lost();
        break;
    }
  }

  private requestOnce(at: Millis): void {
    if (
      this.requested ||
      this.openedAt === undefined ||
      at - this.openedAt < declarationExpected ||
      !this.reader.mayRequest
    )
      return;
    this.requested = true;
    this.source.write(new TextEncoder().encode(`${requestLine}\r\n`));
    this.recorder.entry({ kind: 'tx', at, text: requestLine });
    this.events.sent(requestLine);
  }
}
