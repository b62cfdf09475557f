import { createHash } from 'node:crypto';
import { closeSync, openSync, readSync } from 'node:fs';
import { type CaptureLine, captureReader } from '../transport/capture.ts';

/** How much of a capture is in memory at a time. Bytes. */
const piece = 64 * 1024;

/** Reads a capture of any length once, line by line. Its length and its hash are known when the last line was taken. */
export class CaptureFile {
  private readonly path: string;
  private readonly hashing = createHash('sha256');
  private readonly reader = captureReader({ raw: true });

  constructor(path: string) {
    this.path = path;
  }

  *lines(): Generator<CaptureLine> {
    const file = openSync(this.path, 'r');
    try {
      /** Behind the last LF so far: not yet known to be sound. */
      let tail = Buffer.alloc(0);
      while (true) {
        const bytes = Buffer.allocUnsafeSlow(piece);
        const now = bytes.subarray(0, readSync(file, bytes));
        if (now.length === 0) break;
        const end = now.lastIndexOf(LF) + 1;
        if (end > 0) this.hashing.update(tail).update(now.subarray(0, end));
        tail = end > 0 ? Buffer.from(now.subarray(end)) : Buffer.concat([tail, now]);
        yield* this.reader.push(now);
      }
    } finally {
      closeSync(file);
    }
  }

  /** Length up to and with the last LF, in bytes. */
  get length(): number {
    return this.reader.soundBytes;
  }

  /** SHA-256 of the sound part, hex. To be asked once, at the end. */
  hash(): string {
    return this.hashing.digest('hex');
  }
}

const LF = 0x0a;
