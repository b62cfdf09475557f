import { describe, expect, it } from 'vitest';
import type { Ask, AskAction } from '../../src/model/ask.ts';
import { seconds } from '../../src/model/units.ts';
import { seenWords } from '../../src/words/seen-words.ts';
import { actions } from './asks.ts';

const ask = (action: AskAction): Ask => ({ check: 'press', seconds: seconds(20), ...action });
const press = (expect: 'answer' | 'no-answer' = 'answer', deaf: readonly string[] = []): Ask =>
  ask({ action: 'press', subject: 'y-limits/y-min', round: 1, rounds: 3, expect, deaf });

describe('what is said to have been seen', () => {
  it.each([
    ['the input asked for', press(), ['y-limits'], 'Seen: y-limits.', true],
    ['another in its place', press(), ['door'], 'Seen: door answered, not y-limits.', false],
    [
      'several in its place',
      press(),
      ['door', 'probe'],
      'Seen: door and probe answered, not y-limits.',
      false,
    ],
    ['another beside it', press(), ['y-limits', 'door'], 'Seen: y-limits, and door with it.', false],
    ['one that flickers unasked', press('answer', ['door']), ['door', 'y-limits'], 'Seen: y-limits.', true],
    ['any, with the plug out', press('no-answer'), ['door'], 'Seen: door; no answer was expected.', false],
    [
      'a switch let go',
      ask({ action: 'release', subject: 'door', watch: ['door'], why: 'held' }),
      ['door', 'probe'],
      'Seen: door let go.',
      true,
    ],
    [
      'all axes at home',
      ask({ action: 'home', axis: 'all' }),
      ['x-home'],
      'Seen: the axes moved and came to rest.',
      true,
    ],
  ])('names what answered: %s', (_case, asked, moved, text, asExpected) => {
    expect(seenWords(asked, moved)).toEqual({ text, asExpected });
  });

  it('is never bare: every ask has a word for what was seen', () => {
    for (const action of actions) expect(seenWords(ask(action), []).text).toMatch(/^Seen: .+\.$/);
  });
});
