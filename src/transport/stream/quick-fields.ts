import type { Activity } from '../../model/reading.ts';

/** `$PTWRS,`, then printable with no other `$`, one `*` at `star`, and the right sum behind it. */
export function isFramed(bytes: Uint8Array, start: number, star: number): boolean {
  for (let i = 0; i < opening.length; i++) if (bytes[start + i] !== opening[i]) return false;
  if (bytes[star] !== STAR) return false;
  let sum = 0;
  for (let i = start + 1; i < star; i++) {
    const byte = bytes[i] ?? 0;
    if (byte < 0x20 || byte > 0x7e || byte === DOLLAR || byte === STAR) return false;
    sum ^= byte;
  }
  return hexDigit(bytes[star + 1]) === sum >> 4 && hexDigit(bytes[star + 2]) === (sum & 15);
}

const opening = [0x24, 0x50, 0x54, 0x57, 0x52, 0x53, 0x2c];
const [DOLLAR, STAR, MINUS, POINT] = [0x24, 0x2a, 0x2d, 0x2e];

/** The value of an upper-case hex digit; -1 of anything else. */
function hexDigit(byte = 0): number {
  if (byte >= 0x30 && byte <= 0x39) return byte - 0x30;
  return byte >= 0x41 && byte <= 0x46 ? byte - 0x37 : -1;
}

const activities: readonly (readonly [Activity, readonly number[]])[] = (
  ['still', 'moving', 'homing', 'fault'] as const
).map((word) => [word, [...`${word},`].map((letter) => letter.charCodeAt(0))]);

/** The activity that stands here with a comma behind it; undefined where none of the words does. */
export function activityAt(bytes: Uint8Array, at: number): Activity | undefined {
  for (const [word, codes] of activities) {
    let i = 0;
    while (i < codes.length && bytes[at + i] === codes[i]) i++;
    if (i === codes.length) return word;
  }
  return undefined;
}

export interface Numbers {
  /** One to ten digits; Infinity where there is anything else. */
  whole(bytes: Uint8Array, from: number): number;
  /** A sign, one to seven digits, perhaps a point with one to six behind it; NaN where there is anything else. */
  decimal(bytes: Uint8Array, from: number): number;
  /** Where the last number ended. */
  readonly next: number;
}

const powers = [1, 10, 100, 1000, 1e4, 1e5, 1e6];

/** Reads numbers from bytes. */
export function numbers(): Numbers {
  let next = 0;
  let value = 0;
  /** Goes on through digits and gives their count. */
  const digits = (bytes: Uint8Array): number => {
    const from = next;
    for (let byte = bytes[next] ?? 0; byte >= 0x30 && byte <= 0x39; byte = bytes[++next] ?? 0)
      value = value * 10 + byte - 0x30;
    return next - from;
  };
  return {
    whole(bytes, from) {
      next = from;
      value = 0;
      const count = digits(bytes);
      return count < 1 || count > 10 ? Number.POSITIVE_INFINITY : value;
    },
    decimal(bytes, from) {
      const minus = bytes[from] === MINUS;
      next = minus ? from + 1 : from;
      value = 0;
      const before = digits(bytes);
      if (before < 1 || before > 7) return Number.NaN;
      let behind = 0;
      if (bytes[next] === POINT) {
        next++;
        behind = digits(bytes);
        if (behind < 1 || behind > 6) return Number.NaN;
      }
      // Both are whole and below 2^53, so the quotient is the very number that the digits spell.
      const size = value / (powers[behind] ?? 1);
      return minus ? 0 - size : size;
    },
    get next() {
      return next;
    },
  };
}
