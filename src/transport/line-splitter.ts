import type { Line } from '../model/reading.ts';
import type { Millis } from '../model/units.ts';

/** Longest native line in all, its LF and a CR before it included. */
export const nativeLineLimit = 240;

export interface LineSplitter {
  /** The lines that these bytes bring to their end; each arrived when its LF did. */
  push(bytes: Uint8Array, arrived: Millis): readonly Line[];
  /** The unfinished line, where the port went away in its middle. */
  flush(arrived: Millis): Line | undefined;
}

/**
 * Cuts a stream of bytes into lines at LF and drops one CR before it. A line keeps its first `limit` bytes, as latin1 characters,
 * and counts the rest, so that ten megabytes without LF cost no more memory than one line.
 *
 * A line longer than `limit` in all keeps its CR: so its text is at least `limit` long, and no reader can mistake it for one
 * that fitted.
 *
 * @serialport/parser-readline is not used here. Behind a guard that cuts over-long lines it would find the same LFs, but the
 * guard has to find them first, and neither the arrival time of a line nor the count of what was cut passes through it.
 */
export function lineSplitter(limit = nativeLineLimit): LineSplitter {
  const kept = Buffer.alloc(limit);
  /** Bytes of the unfinished line so far, kept or not. */
  let length = 0;

  const keep = (bytes: Uint8Array) => {
    if (length < limit) kept.set(bytes.subarray(0, limit - length), length);
    length += bytes.length;
  };

  const take = (arrived: Millis): Line => {
    const text = kept.toString('latin1', 0, Math.min(length, limit));
    const cut = Math.max(0, length - limit);
    const tooLong = length >= limit;
    length = 0;
    return { arrived, text: tooLong ? text : withoutEnd(text), cut };
  };

  /** Nearly every line comes whole, and need not be kept in between. */
  const whole = (bytes: Uint8Array, start: number, end: number, arrived: Millis): Line => {
    const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).toString('latin1', start, end);
    return { arrived, text: withoutEnd(text), cut: 0 };
  };

  return {
    push(bytes, arrived) {
      const lines: Line[] = [];
      let start = 0;
      for (let end = bytes.indexOf(LF); end !== -1; end = bytes.indexOf(LF, start)) {
        if (length === 0 && end - start < limit) lines.push(whole(bytes, start, end, arrived));
        else {
          keep(bytes.subarray(start, end));
          lines.push(take(arrived));
        }
        start = end + 1;
      }
      if (start < bytes.length) keep(bytes.subarray(start));
      return lines;
    },
    flush: (arrived) => (length === 0 ? undefined : take(arrived)),
  };
}

const withoutEnd = (text: string): string => (text.endsWith('\r') ? text.slice(0, -1) : text);

const LF = 0x0a;
