import type { Missing } from '../model/verdict.ts';

/** What kept a check from its evidence, as the end of the sentence "not tested: ...". */
export const missingWords = {
  stopped: 'the session ended before it',
  skipped: 'it was skipped',
  cannot: 'it was not possible here',
  'not-sure': 'the person was not sure',
  'no-answer-given': 'nothing changed and nobody said that it was done',
  'motors-not-off': 'motor power was not confirmed off',
  'not-propped': 'the vertical axis was not confirmed propped',
  'not-confirmed': 'a question that had to be confirmed was not',
  'control-press':
    'the press with the plug out is missing; without it nobody knows whether the right plug was pulled',
  'settled-level': 'the level did not settle after the plug was pulled',
  'press-after-replug': 'the press after plugging in again is missing',
  replug: 'the plug was not put back',
  'never-answered': 'the switch gave no answer that could be relied on',
  'rest-in-doubt': 'it is not known whether something operated the switch at rest',
  'input-not-reported': 'the stream does not report this input',
  'stream-broke-off': 'the stream broke off, and again when it was repeated',
  'stream-too-slow': 'the stream had holes in which a whole press could pass',
  'out-of-reach': 'the machine file says it is out of reach',
  'voltage-unknown': 'the voltage on the plug is unknown, so nobody is asked to pull it',
  'voltage-too-high': 'more than 30 V may stand on the plug, so nobody is asked to pull it',
  'plug-not-confirmed': 'nobody confirmed that it is a signal plug of at most 30 V',
  'chain-open': 'another switch of the same chain kept the input operated',
  'something-out': 'something was still unplugged',
  'power-not-looked-at': 'nobody looked whether drive power went',
  'watched-too-short': 'it was watched for less than a minute',
  'no-such-check-yet': 'this version has no such check',
} satisfies Record<Missing, string>;
