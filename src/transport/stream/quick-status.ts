import type { Active, Activity, Level } from '../../model/reading.ts';
import { xorOf } from './checksum.ts';
import { maxClock, maxSequence } from './native-numbers.ts';
import { hexDigit, type Piece, QuickInputs, wordOf } from './quick-fields.ts';
import type { StatusSentence } from './sentence.ts';

/**
 * Reads a sound status sentence straight from the bytes of a line: nearly every line of a capture is one. Anything else is left
 * to `readSentence`, which gives the same for everything that is read here. It is itself the sentence it read last, so that none
 * has to be made for each line; activity, levels and active that did not change come as the same arrays.
 */
export class QuickStatus implements StatusSentence {
  readonly kind = 'status';
  seq = 0;
  ms = 0;
  positions: readonly number[] = [];
  /** Where the line ended: its LF. */
  end = 0;
  /** Where activity, levels and active began and ended, and where the star stood. */
  inputsAt = 0;
  inputsEnd = 0;
  star = 0;
  private readonly inputs = new QuickInputs();
  private readonly places = new Float64Array(longestText);

  get activity(): Activity {
    return this.inputs.activity;
  }
  get levels(): readonly Level[] {
    return this.inputs.levels;
  }
  get active(): readonly Active[] {
    return this.inputs.active;
  }

  /** Whether a sound status sentence stands from `from` up to the LF. Written out in one, with no call a field: it is called a million times over. */
  read(piece: Piece, from: number): boolean {
    const { bytes, words } = piece;
    if (words.getInt32(from, true) !== opening || words.getInt32(from + 3, true) !== address) return false;
    let at = from + 7;
    let sum = sumBefore;
    let start = at;
    let value = 0;
    let byte = bytes[at] ?? 0;
    for (; byte >= ZERO && byte <= NINE; byte = bytes[++at] ?? 0) {
      value = (value * 10 + byte - ZERO) | 0;
      sum ^= byte;
    }
    if (byte !== COMMA || at === start || at - start > 5 || value > maxSequence) return false;
    const seq = value;
    start = ++at;
    value = 0;
    byte = bytes[at] ?? 0;
    for (; byte >= ZERO && byte <= NINE; byte = bytes[++at] ?? 0) {
      value = (value * 10 + byte - ZERO) | 0;
      sum ^= byte;
    }
    if (byte !== COMMA || at === start || at - start > 10) return false;
    const ms = at - start < 10 ? value : Number(bytes.toString('latin1', start, at));
    if (ms > maxClock) return false;
    const taken = this.inputs.read(piece, at + 1);
    if (taken === 0) return false;
    this.inputsAt = at + 1;
    at += 1 + taken;
    this.inputsEnd = at;
    sum ^= this.inputs.sum;
    let axes = 0;
    for (byte = bytes[at] ?? 0; byte === COMMA; ) {
      byte = bytes[++at] ?? 0;
      sum ^= COMMA;
      const minus = byte === MINUS;
      if (minus) {
        sum ^= MINUS;
        byte = bytes[++at] ?? 0;
      }
      start = at;
      value = 0;
      for (; byte >= ZERO && byte <= NINE; byte = bytes[++at] ?? 0) {
        value = (value * 10 + byte - ZERO) | 0;
        sum ^= byte;
      }
      if (at === start || at - start > 7) return false;
      if (byte === POINT) {
        sum ^= POINT;
        byte = bytes[++at] ?? 0;
        start = at;
        let part = 0;
        for (; byte >= ZERO && byte <= NINE; byte = bytes[++at] ?? 0) {
          part = (part * 10 + byte - ZERO) | 0;
          sum ^= byte;
        }
        if (at === start || at - start > 6) return false;
        const scale = powers[at - start] ?? 1;
        // Both are whole and below 2^53, so the quotient is the very number that the digits spell.
        value = (value * scale + part) / scale;
      }
      this.places[axes++] = minus ? 0 - value : value;
    }
    if (byte !== STAR || axes > mostAxes || bytes[at + 3] !== LF || at - from > longestText - 3) return false;
    if (hexDigit(bytes[at + 1]) !== sum >> 4 || hexDigit(bytes[at + 2]) !== (sum & 15)) return false;
    this.seq = seq;
    this.ms = ms;
    this.keepPlaces(axes);
    this.star = at;
    this.end = at + 3;
    return true;
  }

  /** Machines stand most of the time: then the list is the one before. */
  private keepPlaces(axes: number): void {
    const { places, positions } = this;
    let same = positions.length === axes;
    for (let i = 0; same && i < axes; i++) same = positions[i] === places[i];
    if (same) return;
    const list: number[] = [];
    for (let i = 0; i < axes; i++) list.push(places[i] ?? 0);
    this.positions = list;
  }
}

const [LF, STAR, COMMA, MINUS, POINT, ZERO, NINE] = [0x0a, 0x2a, 0x2c, 0x2d, 0x2e, 0x30, 0x39];
const longestText = 239;
const mostAxes = 9;
/** The two words overlap: together they are `$PTWRS,`. */
const [opening, address] = [wordOf('$PTW'), wordOf('WRS,')];
/** Of the address and the three commas around sequence and clock. */
const sumBefore = xorOf('PTWRS,,,');
const powers = [1, 10, 100, 1000, 1e4, 1e5, 1e6];
