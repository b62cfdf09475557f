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
  /** Three for each word: the bits that must be as they were, how they were, and the high half of each digit. */
  private readonly plan = new Int32Array(3 * mostWords);
  /** Bits of the last word that belong to it. */
  private tail = 0;
  private seqEnd = 0;
  private msEnd = 0;

  /** Learns the sound status from `from` to its `star`. `inputs`, `inputsEnd`: between them stand activity, levels and active, which are compared as they are. */
  learn({ bytes, words }: Piece, from: number, star: number, inputs: number, inputsEnd: number): void {
    this.length = star - from;
    this.words = (this.length + 3) >> 2;
    this.tail = tails[this.length & 3] ?? 0;
    this.seqEnd = bytes.indexOf(COMMA, from + 7) - from;
    this.msEnd = inputs - 1 - from;
    for (let word = 0; word < this.words; word++) {
      let digits = 0;
      let fixed = 0;
      for (let i = 0; i < 4 && word * 4 + i < this.length; i++) {
        const at = from + word * 4 + i;
        const free = isDigit(bytes[at]) && (at < inputs || at >= inputsEnd);
        if (free) digits |= 0xff << (8 * i);
        else fixed |= 0xff << (8 * i);
      }
      this.plan.set([fixed, words.getInt32(from + word * 4, true) & fixed, digits & HIGH], 3 * word);
    }
  }

  /** Whether a sound status of the same shape stands from `from` up to the LF. */
  read({ bytes, words }: Piece, from: number): boolean {
    const star = from + this.length;
    if (this.length === 0 || bytes[star] !== STAR || bytes[star + 3] !== LF) return false;
    const { plan, words: count } = this;
    let sum = 0;
    let wrong = 0;
    let word = 0;
    for (let i = 0, at = from; i < 3 * count; i += 3, at += 4) {
      word = words.getInt32(at, true);
      wrong |= (word & (plan[i] ?? 0)) ^ (plan[i + 1] ?? 0);
      wrong |= ((word ^ ZEROS) | ((word & LOW) + SIXES)) & (plan[i + 2] ?? 0);
      sum ^= word;
    }
    if (wrong !== 0) return false;
    // What the last word read too much goes out again.
    sum ^= word & ~this.tail;
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
/** A digit has a three in its high half and at most a nine in its low half, to which six more do not reach the high half. */
const [ZEROS, HIGH, LOW, SIXES] = [0x30303030, 0xf0f0f0f0 | 0, 0x0f0f0f0f, 0x06060606];
const tails = [-1, 0xff, 0xffff, 0xffffff];
/** Of the longest sentence. */
const mostWords = 60;
