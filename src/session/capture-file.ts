import { createHash, type Hash } from 'node:crypto';
import { closeSync, openSync, readSync } from 'node:fs';
import { type CaptureLine, captureLine } from '../transport/capture.ts';
import { type Piece, pieceOf, wordsBehind } from '../transport/stream/quick-fields.ts';

/** How much of a capture is in memory at a time, unless a line is longer. Bytes. */
const usualSize = 256 * 1024;

/** Reads a capture of any length once. Its length and its hash are known when the last line was taken. */
export class CaptureFile {
  private readonly path: string;
  private readonly hashing: Hash | undefined;
  private sound = 0;

  /** `hashed` false: nobody asks for the hash. */
  constructor(path: string, { hashed = true } = {}) {
    this.path = path;
    this.hashing = hashed ? createHash('sha256') : undefined;
  }

  /** Whole lines, `end` behind the last LF; the next piece takes the place of the one before. */
  *pieces(): Generator<{ readonly piece: Piece; readonly end: number }> {
    const file = openSync(this.path, 'r');
    try {
      let piece = pieceOf(usualSize);
      /** Behind the last LF so far: not yet known to be sound. */
      let torn = 0;
      while (true) {
        const { bytes } = piece;
        const got = readSync(file, bytes, torn, bytes.length - wordsBehind - torn, null);
        if (got === 0) return;
        const filled = torn + got;
        const end = bytes.lastIndexOf(LF, filled - 1) + 1;
        torn = filled - end;
        if (end > 0) {
          this.hashing?.update(bytes.subarray(0, end));
          this.sound += end;
          yield { piece, end };
          bytes.copyWithin(0, end, filled);
        } else if (filled === bytes.length - wordsBehind) {
          piece = pieceOf(2 * filled);
          bytes.copy(piece.bytes);
        }
      }
    } finally {
      closeSync(file);
    }
  }

  *lines(): Generator<CaptureLine> {
    let count = 0;
    for (const { piece, end } of this.pieces())
      for (let from = 0, to = 0; from < end; from = to + 1) {
        to = piece.bytes.indexOf(LF, from);
        yield captureLine(piece.bytes, from, to, ++count);
      }
  }

  /** Length up to and with the last LF, in bytes. */
  get length(): number {
    return this.sound;
  }

  /** SHA-256 of the sound part, hex. To be asked once, at the end. */
  hash(): string {
    return this.hashing?.digest('hex') ?? '';
  }

  /** The same of a file that nobody reads otherwise. */
  hashWhole(): string {
    for (const _ of this.pieces());
    return this.hash();
  }
}

const LF = 0x0a;
