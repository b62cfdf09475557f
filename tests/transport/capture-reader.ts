import { type CaptureLine, captureLine } from '../../src/transport/capture.ts';

export interface CaptureReader {
  /** The lines that these bytes of the file bring to their end. */
  push(bytes: Uint8Array): readonly CaptureLine[];
  /** Bytes up to and with the last LF: what follows was torn off while it was written and counts for nothing. */
  readonly soundBytes: number;
  /** Bytes behind the last LF. */
  readonly tornBytes: number;
}

/** Reads a capture in pieces of any size and in the plainest way: what `CaptureFile` and `CaptureWalk` do sooner is held against it. */
export function captureReader(): CaptureReader {
  let rest = Buffer.alloc(0);
  let soundBytes = 0;
  let lines = 0;
  return {
    push(bytes) {
      const found: CaptureLine[] = [];
      const take = (from: Buffer, start: number, end: number) => {
        lines += 1;
        found.push(captureLine(from, start, end, lines));
        soundBytes += end + 1 - start;
      };
      const piece = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
      let start = 0;
      for (let end = piece.indexOf(LF); end !== -1; end = piece.indexOf(LF, start)) {
        if (rest.length > 0) {
          const whole = Buffer.concat([rest, piece.subarray(start, end)]);
          rest = Buffer.alloc(0);
          take(whole, 0, whole.length);
        } else take(piece, start, end);
        start = end + 1;
      }
      if (start < piece.length) rest = Buffer.concat([rest, piece.subarray(start)]);
      return found;
    },
    get soundBytes() {
      return soundBytes;
    },
    get tornBytes() {
      return rest.length;
    },
  };
}

const LF = 0x0a;
