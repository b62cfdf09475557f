import { type Ask, answersTo } from '../model/ask.ts';
import type { Machine } from '../model/machine.ts';
import { askWords } from '../words/ask-words.ts';
import type { ShownAsk } from './operator.ts';

/** An ask with the very words and answers it is shown with. */
export function shownAsk(id: number, ask: Ask, machine: Machine, again: number | undefined): ShownAsk {
  const { text, cautions } = askWords(ask, machine);
  return {
    kind: 'ask',
    id,
    ...(again !== undefined && { again }),
    ask,
    text,
    cautions,
    answers: answersTo(ask),
  };
}
