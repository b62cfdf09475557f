import { type Millis, ms } from '../model/units.ts';
import { type Piece, wordOf } from './stream/quick-fields.ts';

/**
 * Reads what a line of a capture begins with where it was received whole: its time and ` rx `. Every other line is left to
 * `decodeEntry`, which gives the same for those that are read here.
 */
export class ReceivedHead {
  /** The moment that was read last. */
  at: Millis = ms(0);

  /** Where the text of the line begins; -1 where this is not how it begins. */
  read({ bytes, words }: Piece, from: number): number {
    let whole = 0;
    let at = from;
    let byte = bytes[at] ?? 0;
    for (; byte >= ZERO && byte <= NINE; byte = bytes[++at] ?? 0) whole = (whole * 10 + byte - ZERO) | 0;
    if (at === from || at - from > 12 || byte !== POINT) return -1;
    if (at - from > 9) whole = Number(bytes.toString('latin1', from, at));
    const part = words.getInt32(at + 1, true);
    // Three digits and a space.
    if ((part & 0xfff0f0f0) !== 0x20303030 || ((part + 0x060606) & 0xf0f0f0) !== 0x303030) return -1;
    if (words.getInt32(at + 4, true) !== received) return -1;
    const thousandths = (part & 15) * 100 + ((part >>> 8) & 15) * 10 + ((part >>> 16) & 15);
    // Both numbers are whole, so the quotient is the very number that the digits spell.
    this.at = ms((whole * 1000 + thousandths) / 1000);
    return at + 8;
  }
}

const [ZERO, NINE, POINT] = [0x30, 0x39, 0x2e];
const received = wordOf(' rx ');
