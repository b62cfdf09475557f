import type { EndedBy } from '../model/ask.ts';
import type { UnreadableWhy } from '../model/reading.ts';

/** Why a line could not be read. It is counted and kept, never judged. */
export const unreadableWords = {
  'too-long': 'longer than 240 bytes',
  'not-a-sentence': 'no sentence',
  'wrong-sum': 'wrong checksum',
  'unknown-sentence': 'unknown sentence',
  'wrong-field-count': 'wrong number of fields',
  'wrong-number': 'a number out of its range',
  'out-of-step': 'out of step with the reports around it',
  'before-declaration': 'no declaration yet',
} satisfies Record<UnreadableWhy, string>;

/** How an ask came to its end. */
export const endedWords = {
  seen: 'seen in the stream',
  answer: 'answered',
  time: 'time ran out',
  gap: 'stream broke off',
} satisfies Record<EndedBy, string>;
