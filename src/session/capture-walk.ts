import type { Reading } from '../model/reading.ts';
import { type CaptureLine, captureLine } from '../transport/capture.ts';
import { ReceivedHead } from '../transport/received-head.ts';
import type { Quick, Run } from '../transport/stream/decoder.ts';
import { type Piece, pieceOf } from '../transport/stream/quick-fields.ts';
import type { CaptureFile } from './capture-file.ts';
import type { StreamReader } from './stream-reader.ts';

/** What a walk through a capture meets, in its order. */
export interface WalkEvents {
  reading(reading: Reading): void;
  /** Of statuses one behind the other, while nobody asks for more: instead of a `reading` each. `paces` is where theirs are counted. */
  readonly passing?: { run(run: Run): void; readonly paces: Uint32Array };
  /** Every line that did not go the short way, before its readings. */
  line?(line: CaptureLine): void;
}

/**
 * Goes through a saved capture line by line. Nearly every line is a sound status, and goes a short way from the bytes to its
 * reading; whatever is anything else goes the way a live line goes. Both give the same readings.
 */
export class CaptureWalk {
  /** The last moment that a line told of. */
  lastAt = 0;
  /** Lines so far. */
  count = 0;
  private readonly pieces: ReturnType<CaptureFile['pieces']>;
  private readonly reader: StreamReader;
  private readonly events: WalkEvents;
  private readonly head = new ReceivedHead();
  private piece: Piece = pieceOf(0);
  private at = 0;
  private end = 0;

  constructor(capture: CaptureFile, reader: StreamReader, events: WalkEvents) {
    this.pieces = capture.pieces();
    this.reader = reader;
    this.events = events;
  }

  /** Takes up to so many lines more; says how many there were. */
  take(most: number): number {
    return this.through(most);
  }

  /** Takes all that is left. What comes in it matters to nobody but those who count: to `passing`, where that is there. */
  pass(): void {
    this.through(Number.POSITIVE_INFINITY, this.events.passing);
  }

  private through(most: number, passing?: WalkEvents['passing']): number {
    const before = this.count;
    const { quick } = this.reader;
    while (this.count - before < most && (this.at < this.end || this.turn())) {
      if (quick && passing && this.run(quick, passing)) continue;
      this.count++;
      if (!quick || !this.short(quick, passing !== undefined)) this.long();
    }
    return this.count - before;
  }

  private turn(): boolean {
    const next = this.pieces.next();
    if (next.done) return false;
    this.piece = next.value.piece;
    this.end = next.value.end;
    this.at = 0;
    return true;
  }

  private run(quick: Quick, passing: NonNullable<WalkEvents['passing']>): boolean {
    const run = quick.run(this.head, this.piece, this.at, this.end, passing.paces);
    if (run === undefined) return false;
    this.count += 1 + run.further;
    this.goOn(quick.end, run.arrived);
    passing.run(run);
    return true;
  }

  /** `more`: those behind it may go in a run. */
  private short(quick: Quick, more: boolean): boolean {
    const { head, piece } = this;
    const from = head.read(piece, this.at);
    if (from < 0) return false;
    const reading = quick.status(head.at, piece, from);
    if (reading === undefined) return false;
    if (more) quick.learn(piece, from);
    this.goOn(quick.end, head.at);
    this.events.reading(reading);
    return true;
  }

  private goOn(end: number, arrived: number): void {
    this.at = end + 1;
    if (arrived > this.lastAt) this.lastAt = arrived;
  }

  private long(): void {
    const { bytes } = this.piece;
    const to = bytes.indexOf(LF, this.at);
    const line = captureLine(bytes, this.at, to, this.count);
    this.at = to + 1;
    if (line.kind !== 'damaged') this.lastAt = Math.max(this.lastAt, line.at);
    this.events.line?.(line);
    for (const reading of this.reader.entry(line)) this.events.reading(reading);
  }
}

const LF = 0x0a;
