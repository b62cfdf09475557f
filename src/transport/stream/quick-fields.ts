import type { Active, Activity, Level } from '../../model/reading.ts';
import { xorOf } from './checksum.ts';
import { maxInputs } from './native-fields.ts';

/** Bytes that are read a word at a time too. Behind the last line stand `wordsBehind` bytes more, whatever they are. */
export interface Piece {
  readonly bytes: Buffer;
  /** The same bytes. */
  readonly words: DataView;
}

/** How far a reader in words may look behind the LF that ends what it reads. Bytes. */
export const wordsBehind = 32;

/** A piece of that many bytes, with room behind them. */
export function pieceOf(size: number): Piece {
  const bytes = Buffer.alloc(size + wordsBehind);
  return { bytes, words: new DataView(bytes.buffer, bytes.byteOffset, bytes.length) };
}

/** Four characters as one word, the first in its lowest byte. */
export const wordOf = (text: string): number => Buffer.from(text, 'latin1').readInt32LE(0);

/** The value of an upper-case hex digit; -1 of anything else. */
export function hexDigit(byte = 0): number {
  if (byte >= 0x30 && byte <= 0x39) return byte - 0x30;
  return byte >= 0x41 && byte <= 0x46 ? byte - 0x37 : -1;
}

/**
 * Activity, levels and active: the fields of a status that seldom change. As long as the same bytes stand there, the same arrays
 * are meant.
 */
export class QuickInputs {
  activity: Activity = '?';
  levels: readonly Level[] = [];
  active: readonly Active[] = [];
  /** XOR of these fields. */
  sum = 0;
  private length = 0;
  private readonly last = pieceOf(8 + 2 * maxInputs + 2);

  /** How many bytes these fields take up here; 0 where they do not stand here, or one of them is empty. */
  read(piece: Piece, from: number): number {
    const { length, last } = this;
    let i = 0;
    while (i + 4 <= length && last.words.getInt32(i, true) === piece.words.getInt32(from + i, true)) i += 4;
    while (i < length && last.bytes[i] === piece.bytes[from + i]) i++;
    return i === length && length > 0 && isEnd(piece.bytes[from + i]) ? length : this.readAnew(piece, from);
  }

  private readAnew({ bytes }: Piece, from: number): number {
    const text = bytes.toString('latin1', from, from + this.last.bytes.length - wordsBehind);
    const found = /^(still|moving|homing|fault),([HL?]{1,64}),([10?]{1,64})(?=[,*])/.exec(text);
    const [whole = '', activity, levels = '', active = ''] = found ?? [];
    if (levels.length !== active.length) return 0;
    this.length = whole.length;
    this.sum = xorOf(whole);
    this.last.bytes.write(whole, 'latin1');
    this.activity = (activity ?? '?') as Activity;
    this.levels = [...levels] as Level[];
    this.active = [...active] as Active[];
    return whole.length;
  }
}

const isEnd = (byte: number | undefined) => byte === 0x2c || byte === 0x2a;
