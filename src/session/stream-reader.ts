import type { GapReading, Reading } from '../model/reading.ts';
import type { CaptureEntry } from '../transport/capture.ts';
import { NativeDecoder } from '../transport/stream/native-decoder.ts';

/** Capture entries to readings: the same for a line just heard and for one read back from a file. */
export class StreamReader {
  private readonly decoder = new NativeDecoder();

  entry(entry: CaptureEntry): readonly Reading[] {
    switch (entry.kind) {
      case 'rx':
        return this.decoder.line({ arrived: entry.at, text: entry.text, cut: entry.cut });
      case 'opening':
        return this.decoder.gap(entry.at, 'opened');
      case 'gap':
        return this.decoder.gap(entry.at, 'lost-port');
      case 'tx':
        return [];
    }
  }

  /** Law 1: a request may be written only after a whole valid sentence was heard on this opening; it is needed while no declaration came. */
  get mayRequest(): boolean {
    return this.decoder.heardNative && !this.decoder.declared;
  }
}

export const isGap = (reading: Reading): reading is GapReading => reading.kind === 'gap';
