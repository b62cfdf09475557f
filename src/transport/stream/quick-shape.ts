import { sumText } from './checksum.ts';
import { maxClock, maxSequence } from './native-numbers.ts';
import type { Piece } from './quick-fields.ts';

/**
 * Where digits stand in the status that was read last, and what else it says. A line in which digits stand in the very places, and
 * nothing else has changed, is sound by form as that one was: its sum and its numbers are all that is left to look at, four bytes at a time.
 */
export class QuickShape {
  seq = 0;
  ms = 0;
  /** Where the line ended: its LF. */
  end = 0;
  /** From the `$` up to the star; 0: nothing was read yet. */
  private length = 0;
  private words = 0;
  /** For each word: what stood there, with a zero for each digit, and what makes a wrong byte show in its high half. */
  private readonly stood = new Int32Array(mostWords);
  private readonly shows = new Int32Array(mostWords);
  /** XOR of all that stood. */
  private stoodSum = 0;
  /** Bits of the last word that belong to it. */
  private tail = 0;
  private seqEnd = 0;
  private msEnd = 0;

  /** Learns the sound status from `from` to its `star`. `inputs`, `inputsEnd`: between them stand activity, levels and active, which are compared as they are. */
  learn({ bytes }: Piece, from: number, star: number, inputs: number, inputsEnd: number): void {
    this.length = star - from;
    this.words = (this.length + 3) >> 2;
    this.tail = tails[this.length & 3] ?? 0;
    this.seqEnd = bytes.indexOf(COMMA, from + 7) - from;
    this.msEnd = inputs - 1 - from;
    this.stoodSum = 0;
    for (let word = 0; word < this.words; word++) {
      let [stood, shows] = [0, 0];
      for (let i = 0, at = from + 4 * word; i < 4 && at < star; i++, at++) {
        const byte = bytes[at] ?? 0;
        const free = isDigit(byte) && (at < inputs || at >= inputsEnd);
        stood |= (free ? ZERO : byte) << (8 * i);
        shows |= (free ? MORE_THAN_NINE : MORE_THAN_NONE) << (8 * i);
      }
      this.stood[word] = stood;
      this.shows[word] = shows;
      this.stoodSum ^= stood;
    }
  }

  /** Whether a sound status of the same shape stands from `from` up to the LF. */
  read({ bytes, words }: Piece, from: number): boolean {
    const star = from + this.length;
    if (this.length === 0 || bytes[star] !== STAR || bytes[star + 3] !== LF) return false;
    const { stood, shows } = this;
    const last = this.words - 1;
    let sum = this.stoodSum;
    let wrong = 0;
    let at = from;
    for (let i = 0; i < last; i++, at += 4) {
      const differs = words.getInt32(at, true) ^ (stood[i] ?? 0);
      wrong |= differs | (differs + (shows[i] ?? 0));
      sum ^= differs;
    }
    const differs = (words.getInt32(at, true) ^ (stood[last] ?? 0)) & this.tail;
    wrong |= differs | (differs + (shows[last] ?? 0));
    sum ^= differs;
    if ((wrong & HIGH_HALVES) !== 0) return false;
    sum ^= sum >>> 16;
    // The `$` is no part of the sum.
    sum = ((sum ^ (sum >>> 8)) & 0xff) ^ DOLLAR;
    if (words.getUint16(star + 1, true) !== sums[sum]) return false;
    const seq = whole(bytes, from + 7, from + this.seqEnd);
    const ms = whole(bytes, from + this.seqEnd + 1, from + this.msEnd);
    if (seq > maxSequence || ms > maxClock) return false;
    this.seq = seq;
    this.ms = ms;
    this.end = star + 3;
    return true;
  }
}

/** The number that these digits spell. */
function whole(bytes: Buffer, from: number, to: number): number {
  let value = 0;
  for (let at = from; at < to; at++) value = value * 10 + (bytes[at] ?? 0) - 0x30;
  return value;
}

/** The two digits of each sum, as they are read in one. */
const sums = Uint16Array.from({ length: 0x100 }, (_, sum) =>
  Buffer.from(sumText(sum), 'latin1').readUInt16LE(0),
);

const isDigit = (byte = 0): boolean => byte >= 0x30 && byte <= 0x39;

const [LF, DOLLAR, STAR, COMMA] = [0x0a, 0x24, 0x2a, 0x2c];
const ZERO = 0x30;
/** Added to the difference from a zero, from what stood there: the sum reaches the high half of the byte where it is too much. */
const [MORE_THAN_NINE, MORE_THAN_NONE] = [0x06, 0x0f];
const HIGH_HALVES = 0xf0f0f0f0 | 0;
const tails = [-1, 0xff, 0xffff, 0xffffff];
/** Of the longest sentence. */
const mostWords = 60;
