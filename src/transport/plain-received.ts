import { type Millis, ms } from '../model/units.ts';
import type { RawText } from './stream/decoder.ts';

/**
 * A line of a capture that was received whole and holds no escapes, as nearly all do, straight from the bytes of the file.
 * Undefined is no judgement: the reader of every other line gives the same for those that are read here.
 */
export function plainReceived(
  bytes: Buffer,
  start: number,
  end: number,
  raw: boolean,
):
  | {
      readonly kind: 'rx';
      readonly at: Millis;
      readonly text: string;
      readonly cut: number;
      readonly raw?: RawText;
    }
  | undefined {
  let micros = 0;
  let at = start;
  for (let digit = digitOf(bytes[at]); digit >= 0; digit = digitOf(bytes[++at])) micros = micros * 10 + digit;
  if (at === start || at - start > 12 || bytes[at] !== POINT) return undefined;
  for (let i = at + 1; i < at + 4; i++) {
    const digit = digitOf(bytes[i]);
    if (digit < 0) return undefined;
    micros = micros * 10 + digit;
  }
  const text = at + 8;
  if (text > end || bytes[at + 4] !== SPACE || bytes[at + 5] !== R || bytes[at + 6] !== X) return undefined;
  if (bytes[at + 7] !== SPACE) return undefined;
  for (let i = text; i < end; i++) {
    const byte = bytes[i] ?? 0;
    if (byte < SPACE || byte > TILDE || byte === BACKSLASH) return undefined;
  }
  // Both numbers are whole, so the quotient is the very number that the digits spell.
  const moment = ms(micros / 1000);
  const said = bytes.toString('latin1', text, end);
  if (!raw) return { kind: 'rx', at: moment, text: said, cut: 0 };
  return { kind: 'rx', at: moment, text: said, cut: 0, raw: { bytes, start: text, end } };
}

const digitOf = (byte: number | undefined): number =>
  byte !== undefined && byte >= 0x30 && byte <= 0x39 ? byte - 0x30 : -1;

const [SPACE, TILDE, BACKSLASH, POINT, R, X] = [0x20, 0x7e, 0x5c, 0x2e, 0x72, 0x78];
