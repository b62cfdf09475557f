import type { AskedFor } from '../model/ask.ts';
import { checkWords } from './verdict-words.ts';

/** What an ask belongs to, as a heading. */
export function askedForTitle(asked: AskedFor): string {
  if (asked === 'resume') return 'Before going on';
  if (asked === 'learn') return 'Learning the stream';
  return checkWords[asked].title;
}
