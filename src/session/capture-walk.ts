import type { Reading } from '../model/reading.ts';
import { type CaptureLine, captureLine } from '../transport/capture.ts';
import { ReceivedHead } from '../transport/received-head.ts';
import type { Passing, Quick } from '../transport/stream/decoder.ts';
import { type Piece, pieceOf } from '../transport/stream/quick-fields.ts';
import type { CaptureFile } from './capture-file.ts';
import type { StreamReader } from './stream-reader.ts';

/** What a walk through a capture meets, in its order. */
export interface WalkEvents {
  reading(reading: Reading): void;
  /** Of a status that went the short way while nobody asks for more: instead of `reading`. */
  passing?(passing: Passing): void;
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
      this.count++;
      if (!quick || !this.short(quick, passing)) this.long();
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

  private short(quick: Quick, passing: WalkEvents['passing']): boolean {
    const { head, piece } = this;
    const from = head.read(piece, this.at);
    if (from < 0) return false;
    if (passing) {
      const found = quick.passing(head.at, piece, from);
      if (found === undefined) return false;
      this.goOn(quick.end);
      passing(found);
      return true;
    }
    const reading = quick.status(head.at, piece, from);
    if (reading === undefined) return false;
    this.goOn(quick.end);
    this.events.reading(reading);
    return true;
  }

  private goOn(end: number): void {
    this.at = end + 1;
    if (this.head.at > this.lastAt) this.lastAt = this.head.at;
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
