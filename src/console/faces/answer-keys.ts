import type { Answer } from '../../model/ask.ts';

/**
 * One key an answer, the same in every ask: a key that meant "not sure" here and "no" there would be pressed wrongly by
 * a person who looks at the machine.
 */
export const answerKeys = {
  done: 'd',
  cannot: 'c',
  'not-sure': 'u',
  skip: 's',
  stop: 'q',
  yes: 'y',
  no: 'n',
  'knob-free': 'k',
  lamp: 'l',
  meter: 'm',
  'did-not': 'p',
  positive: '+',
  negative: '-',
  none: '0',
  on: 'o',
  off: 'f',
  value: 'v',
  'over-range': 'r',
} satisfies Record<Answer, string>;

/** The answer of the open ask that a key gives, or undefined. */
export const answerOfKey = (key: string, answers: readonly Answer[]): Answer | undefined =>
  answers.find((each) => answerKeys[each] === key.toLowerCase());

/**
 * What a typed line answers: its number in the list, its key, the word, or the unique beginning of one (two letters and
 * more; a whole word of another ask is never taken for the beginning of one of this).
 */
export function answerOfLine(line: string, answers: readonly Answer[]): Answer | undefined {
  const said = line
    .trim()
    .toLowerCase()
    .replace(/[.!]+$/, '')
    .replace(/[\s_]+/g, '-');
  if (/^\d{1,2}$/.test(said)) return answers[Number(said) - 1];
  const exact = answers.find((each) => each === said) ?? answerOfKey(said, answers);
  if (exact || said.length < 2 || said in answerKeys) return exact;
  const begun = answers.filter((each) => each.startsWith(said));
  return begun.length === 1 ? begun[0] : undefined;
}
