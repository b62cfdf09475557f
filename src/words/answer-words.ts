import type { Answer } from '../model/ask.ts';

/** What each answer means, as a face shows it beside its key. */
export const answerWords = {
  done: 'I did it',
  cannot: 'not possible here',
  'not-sure': 'I am not sure',
  skip: 'leave this one out (it is reported as not tested)',
  stop: 'end here; it can be resumed',
  yes: 'yes',
  no: 'no',
  'knob-free': 'a shaft or hand wheel turned freely by hand',
  lamp: 'the drive or contactor lamp went out',
  meter: 'a meter showed no voltage',
  'did-not': 'power did not go away',
  positive: 'in the positive direction',
  negative: 'in the negative direction',
  none: 'it did not move',
  on: 'it is lit',
  off: 'it is dark',
  'over-range': 'the meter shows over range: nothing joins the two',
  value: 'the number you read, with a point for the fraction',
} satisfies Record<Answer, string>;
