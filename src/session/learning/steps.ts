import type { AskedWindow } from '../../diagnose/learning/observed.ts';
import type { Ask, AskAction, AskEnd } from '../../model/ask.ts';
import type { Machine } from '../../model/machine.ts';
import { type Millis, seconds } from '../../model/units.ts';
import type { Study } from './study.ts';

/** What the lines heard while an ask was open stand for. */
export type Meaning = AskedWindow extends infer Each
  ? Each extends AskedWindow
    ? Omit<Each, 'from' | 'to'>
    : never
  : never;

export interface LearnStep {
  readonly ask: Ask;
  readonly meaning: Meaning | undefined;
}

export type LearnEnd = AskEnd & { readonly from: Millis; readonly to: Millis };

/** Yields asks, is sent how each ended. */
export type Learning<Result> = Generator<LearnStep, Result, LearnEnd>;

export interface LearnScene {
  readonly machine: Machine;
  readonly study: Study;
}

const mostTries = 3;

/** Puts one ask; where the stream broke off under it, once more. */
export function* put(action: AskAction, time = 60, meaning?: Meaning): Learning<LearnEnd> {
  const step = { ask: { check: 'learn', seconds: seconds(time), ...action } as Ask, meaning };
  let end = yield step;
  for (let tries = 1; end.by === 'gap' && tries < mostTries; tries++) end = yield step;
  return end;
}

/** Asks until one of several is confirmed; the last question left is asked like the others: nothing is taken for want of another. */
export function* oneOf<Choice>(
  choices: readonly Choice[],
  question: (choice: Choice, others: readonly Choice[]) => AskAction,
): Learning<Choice | undefined> {
  for (const [i, choice] of choices.entries()) {
    const { answer } = yield* put(question(choice, choices.slice(i)));
    if (answer === 'yes') return choice;
    if (answer !== 'no') return undefined;
  }
  return undefined;
}
