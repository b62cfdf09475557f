import { sumDigits } from './checksum.ts';
import { fieldReaders } from './native-fields.ts';
import type { Sentence, Unreadable } from './sentence.ts';

/** Longest text of a sentence: 240 bytes less the LF that ended it. A line splitter hands an over-long line over longer than this. */
const longestText = 239;

/**
 * One line as a sentence, or why it is none. Never throws.
 *
 * A `$` inside the line starts it anew: where a sentence was cut off, by a reset or a lost byte, and the next one ran into it,
 * the last one is whole.
 */
export function readSentence(text: string, cut = 0): Sentence | Unreadable {
  if (cut > 0 || text.length > longestText) return unreadable('too-long');
  const start = text.lastIndexOf('$');
  const framed = start === -1 ? null : /^\$([^*]*)\*([0-9A-F]{2})$/.exec(text.slice(start));
  const body = framed?.[1];
  if (body === undefined || !/^[\x20-\x7e]*$/.test(body)) return unreadable('not-a-sentence');
  if (sumDigits(body) !== framed?.[2]) return unreadable('wrong-sum');
  const [address = '', ...fields] = body.split(',');
  const read = fieldReaders.get(address);
  return read === undefined ? unreadable('unknown-sentence') : read(fields);
}

const unreadable = (why: Unreadable['why']): Unreadable => ({ kind: 'unreadable', why });
