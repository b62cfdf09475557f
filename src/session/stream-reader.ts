import type { GapReading, Reading } from '../model/reading.ts';
import type { CaptureLine } from '../transport/capture.ts';
import { readingsOf } from '../transport/hearing.ts';
import { nativeDecoder } from '../transport/stream/native-decoder.ts';

/** Capture lines to readings: the same for a line just heard and for one read back from a file. */
export class StreamReader {
  private readonly decoder = nativeDecoder();

  entry(entry: CaptureLine): readonly Reading[] {
    return entry.kind === 'damaged' ? [] : readingsOf(entry, this.decoder);
  }

  /** Law 1: a request may be written only after a whole valid sentence was heard on this opening; it is needed while no declaration came. */
  get mayRequest(): boolean {
    return this.decoder.heard && !this.decoder.declared;
  }
}

export const isGap = (reading: Reading): reading is GapReading => reading.kind === 'gap';
