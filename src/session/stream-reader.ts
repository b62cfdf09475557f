import type { GapReading, Reading, StatusReading } from '../model/reading.ts';
import type { StreamDescription } from '../model/stream-description.ts';
import type { CaptureLine } from '../transport/capture.ts';
import { hearing, readingsOf } from '../transport/hearing.ts';
import { lineSplitter, nativeLineLimit } from '../transport/line-splitter.ts';
import type { Decoder, Quick } from '../transport/stream/decoder.ts';
import { describedDecoder } from '../transport/stream/description/described-decoder.ts';
import { nativeDecoder } from '../transport/stream/native-decoder.ts';
import { longestLine } from '../transport/stream/shapes/fields.ts';

/** Capture lines to readings: the same for a line just heard and for one read back from a file. */
export class StreamReader {
  private readonly decoder: Decoder;
  private last: StatusReading | undefined;
  private moves = false;
  readonly description: StreamDescription | undefined;

  /** `description` left out: the native status sentences. */
  constructor(description?: StreamDescription) {
    this.description = description;
    this.decoder = description ? describedDecoder(description) : nativeDecoder();
  }

  /** From what a port hands over to capture entries: lines as long as this stream's may be. */
  hearing(port: string): ReturnType<typeof hearing> {
    return hearing(port, lineSplitter(this.description ? longestLine : nativeLineLimit));
  }

  entry(entry: CaptureLine): readonly Reading[] {
    const readings = entry.kind === 'damaged' ? [] : readingsOf(entry, this.decoder);
    const { latest } = this.decoder;
    // Before anything is written, one report that something moves is enough; what is judged may wait for a second one.
    if (latest === undefined) for (const reading of readings) this.noteMotion(reading);
    else if (latest !== this.last) this.noteMotion(latest);
    return readings;
  }

  /** Reads nearly every line of a saved capture, and sooner; what it gives is not followed for `isMoving`. */
  get quick(): Quick | undefined {
    return this.decoder.quick;
  }

  /** The last report said that something moves, or showed a position that differs from the one before. */
  get isMoving(): boolean {
    return this.moves;
  }

  /** Who is at the machine says so, whatever was last reported. */
  standsStill(): void {
    this.moves = false;
  }

  private noteMotion(status: Reading): void {
    if (status.kind !== 'status') return;
    const before = this.last?.positions;
    const went = status.positions.some(
      (at, i) => at !== undefined && before?.[i] !== undefined && at !== before[i],
    );
    this.moves = status.activity === '?' ? went : status.activity !== 'still';
    this.last = status;
  }

  /** Law 1: a request may be written only after a whole valid sentence was heard on this opening; it is needed while no declaration came. */
  get mayRequest(): boolean {
    return this.decoder.heard && !this.decoder.declared;
  }
}

export const isGap = (reading: Reading): reading is GapReading => reading.kind === 'gap';
