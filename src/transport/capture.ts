import { type Millis, ms } from '../model/units.ts';
import { escapeBytes, unescapeBytes } from '../model/visible.ts';

/**
 * One line of capture.log: a received or a sent line, a gap, an opening. `at` is the host's monotonic clock in whole microseconds;
 * texts are bytes as latin1 characters.
 */
export type CaptureEntry =
  /** A line's first bytes and how many more there were. */
  | { readonly kind: 'rx'; readonly at: Millis; readonly text: string; readonly cut: number }
  /** The bytes written, with their line end. */
  | { readonly kind: 'tx'; readonly at: Millis; readonly text: string }
  /** The port went away, and what the system said of it. */
  | { readonly kind: 'gap'; readonly at: Millis; readonly text: string }
  /** The port was opened, under this name. */
  | { readonly kind: 'opening'; readonly at: Millis; readonly text: string };

/**
 * An entry as its line, LF included: time in ms to 0.001, direction (with `+n` where n bytes were cut), the text with every byte
 * outside printable ASCII, and the backslash, as \xNN.
 */
export function encodeEntry(entry: CaptureEntry): string {
  const cut = entry.kind === 'rx' && entry.cut > 0 ? `+${entry.cut}` : '';
  return `${entry.at.toFixed(3)} ${entry.kind}${cut} ${escapeBytes(entry.text)}\n`;
}

/** The entry of a line without its LF; undefined where the line is not exactly one that `encodeEntry` writes. */
export function decodeEntry(line: string): CaptureEntry | undefined {
  const found = /^(\d{1,12}\.\d{3}) (rx|tx|gap|opening)(?:\+([1-9]\d{0,14}))? (.*)$/.exec(line);
  if (found === null) return undefined;
  const [, time, kind, more, escaped = ''] = found;
  const text = unescapeBytes(escaped);
  if (text === undefined) return undefined;
  const at = ms(Number(time));
  if (kind === 'rx') return { kind, at, text, cut: Number(more ?? 0) };
  if (more !== undefined) return undefined;
  if (kind === 'tx' || kind === 'gap' || kind === 'opening') return { kind, at, text };
  return undefined;
}

/** What a saved capture holds: entries, and lines that are none. */
export type CaptureLine =
  | CaptureEntry
  /** Damaged after it was written. `line` counts from 1. */
  | { readonly kind: 'damaged'; readonly line: number; readonly text: string };

/** What the bytes from `start` up to an LF at `end` say, as the line of that number, counted from 1. */
export function captureLine(bytes: Buffer, start: number, end: number, line: number): CaptureLine {
  const text = bytes.toString('latin1', start, end);
  return decodeEntry(text) ?? { kind: 'damaged', line, text };
}

/** A moment as a capture keeps it: whatever judged it live judges the same number again. */
export const toMicrosecond = (moment: Millis): Millis => ms(Math.round(moment * 1000) / 1000);
