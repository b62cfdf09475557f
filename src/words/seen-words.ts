import { type Ask, subjectOf } from '../model/ask.ts';
import type { InputName } from '../model/machine.ts';
import { listed } from './figures.ts';

/** What changed while an ask was open, and whether it is what was waited for. */
export interface SeenWords {
  readonly text: string;
  readonly asExpected: boolean;
}

/**
 * What ended an ask that waits for the stream. `moved`: the inputs that changed while it was open, first mover first. Of a press it says which input answered:
 * that of the switch asked for, or another.
 */
export function seenWords(ask: Ask, moved: readonly InputName[]): SeenWords {
  switch (ask.action) {
    case 'press':
      return pressSeen(ask, moved);
    case 'release': {
      const free = moved.filter((each) => ask.watch.includes(each));
      return expected(free.length === 0 ? 'let go' : `${listed(free)} let go`);
    }
    case 'clear':
      return expected('the halt is cleared');
    case 'seek':
    case 'home':
    case 'move':
      return expected(`${ask.axis === 'all' ? 'the axes' : ask.axis} moved and came to rest`);
    default:
      return expected('done');
  }
}

const expected = (what: string): SeenWords => ({ text: `Seen: ${what}.`, asExpected: true });
const otherwise = (what: string): SeenWords => ({ text: `Seen: ${what}.`, asExpected: false });

function pressSeen(ask: Extract<Ask, { readonly action: 'press' }>, moved: readonly InputName[]): SeenWords {
  const answered = moved.filter((each) => !ask.deaf.includes(each));
  const asked = inputAsked(ask);
  if (ask.expect === 'no-answer')
    return answered.length === 0
      ? expected('done')
      : otherwise(`${listed(answered)}; no answer was expected`);
  const others = answered.filter((each) => each !== asked);
  if (others.length === 0) return expected(asked);
  if (answered.length > others.length) return otherwise(`${asked}, and ${listed(others)} with it`);
  return otherwise(`${listed(others)} answered, not ${asked}`);
}

const inputAsked = (ask: Extract<Ask, { readonly action: 'press' }>): InputName =>
  subjectOf(ask)?.split('/')[0] ?? ask.subject;
