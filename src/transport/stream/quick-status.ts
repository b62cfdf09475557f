import type { Active, Activity, Level } from '../../model/reading.ts';
import { maxInputs } from './native-fields.ts';
import { maxClock, maxSequence } from './native-numbers.ts';
import { activityAt, isFramed, type Numbers, numbers } from './quick-fields.ts';
import type { StatusSentence } from './sentence.ts';

/**
 * Reads a sound status sentence straight from the bytes of a line, from `start` to `end`: nearly every line of a capture is one.
 * Anything else is undefined and left to `readSentence`, which gives the same for everything that is read here. Levels that did
 * not change since the last sentence come as the same arrays.
 */
export function quickStatus(): (bytes: Uint8Array, start: number, end: number) => StatusSentence | undefined {
  const at: Numbers = numbers();
  let levels: readonly Level[] = [];
  let active: readonly Active[] = [];

  return (bytes, start, end) => {
    const star = end - 3;
    if (star - start < 12 || end - start > longestText || !isFramed(bytes, start, star)) return undefined;
    const seq = at.whole(bytes, start + 7);
    if (seq > maxSequence || bytes[at.next] !== COMMA) return undefined;
    const ms = at.whole(bytes, at.next + 1);
    if (ms > maxClock || bytes[at.next] !== COMMA) return undefined;
    const activity: Activity | undefined = activityAt(bytes, at.next + 1);
    if (activity === undefined) return undefined;
    const from = at.next + activity.length + 2;
    let to = from;
    while (bytes[to] !== COMMA && to < star) to++;
    const inputs = to - from;
    const behind = to + 1 + inputs;
    if (inputs === 0 || inputs > maxInputs || behind > star) return undefined;
    if (behind !== star && bytes[behind] !== COMMA) return undefined;
    if (!isSame(levels, bytes, from, inputs)) {
      const text = textOf(bytes, from, to);
      if (!/^[HL?]+$/.test(text)) return undefined;
      levels = [...text] as Level[];
    }
    if (!isSame(active, bytes, to + 1, inputs)) {
      const text = textOf(bytes, to + 1, behind);
      if (!/^[10?]+$/.test(text)) return undefined;
      active = [...text] as Active[];
    }
    const positions: number[] = [];
    for (let i = behind; i < star; i = at.next) {
      const value = at.decimal(bytes, i + 1);
      if (Number.isNaN(value) || (at.next !== star && bytes[at.next] !== COMMA)) return undefined;
      positions.push(value);
    }
    if (positions.length > 9) return undefined;
    return { kind: 'status', seq, ms, activity, levels, active, positions };
  };
}

const isSame = (items: readonly string[], bytes: Uint8Array, from: number, count: number): boolean => {
  if (items.length !== count) return false;
  for (let i = 0; i < count; i++) if (items[i]?.charCodeAt(0) !== bytes[from + i]) return false;
  return true;
};

const textOf = (bytes: Uint8Array, from: number, to: number): string =>
  String.fromCharCode(...bytes.subarray(from, to));

const COMMA = 0x2c;
const longestText = 239;
