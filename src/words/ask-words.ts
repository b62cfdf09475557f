import type { Ask } from '../model/ask.ts';
import type { Machine } from '../model/machine.ts';
import { clearWords, handsOffWords, powerWords } from './ask-hands.ts';
import { jumperWords } from './ask-jumper.ts';
import { moveWords } from './ask-learn.ts';
import { lengthWords } from './ask-length.ts';
import { confirmWords, lookWords } from './ask-look.ts';
import { homeWords, seekWords } from './ask-motion.ts';
import { plugWords } from './ask-plug.ts';
import { pressWords, releaseWords } from './ask-press.ts';
import { meterWords } from './cause/ask-meter.ts';
import { clip } from './figures.ts';
import type { AskWords } from './instruction.ts';

export type { AskWords };

type Words = { readonly [Action in Ask['action']]: (ask: Of<Action>, machine: Machine) => AskWords };
type Of<Action extends Ask['action']> = Extract<Ask, { readonly action: Action }>;

const words = {
  'hands-off': handsOffWords,
  press: pressWords,
  release: releaseWords,
  power: powerWords,
  unplug: plugWords,
  replug: plugWords,
  jumper: jumperWords,
  unjumper: jumperWords,
  measure: measureWords,
  clear: clearWords,
  seek: seekWords,
  home: homeWords,
  move: moveWords,
  look: lookWords,
  confirm: confirmWords,
} satisfies Words;

function measureWords(ask: Of<'measure'>, machine: Machine): AskWords {
  return ask.quantity === 'distance' ? lengthWords(ask, machine) : meterWords(ask, machine);
}

/** Of an ask that was open when a session broke off. */
export const askedAgain = 'This was being asked when the session broke off, and is asked again.';

/** One instruction, imperative, in the person's own words, with the cautions that belong to it. */
export function askWords(ask: Ask, machine: Machine): AskWords {
  const say = words[ask.action] as (ask: Ask, machine: Machine) => AskWords;
  const said = say(ask, machine);
  const text = ask.onceMore
    ? `Once more, for what came of it before is hard to believe. ${said.text}`
    : said.text;
  return { ...said, text, short: clip(said.short, 60) };
}
