import type { Reply } from '../session/operator.ts';
import { answerOfKey } from './faces/answer-keys.ts';
import { ownLineKey } from './faces/own-line-prompt.ts';
import { typedNumber } from './faces/typed-number.ts';
import type { ScreenState } from './painting/screen-state.ts';

/** What was being typed when the prompt was taken away is no answer to anything. ms. */
const typesOnFor = 1500;

/** Turns keys into answers, numbers, and lines of the person's own. */
export class ScreenKeys {
  private readonly state: ScreenState;
  private readonly take: (reply: Reply) => void;
  /** Keys that belong to something else than the ask. */
  private readonly others: (name: string) => boolean;

  constructor(state: ScreenState, take: (reply: Reply) => void, others: (name: string) => boolean) {
    this.state = state;
    this.take = take;
    this.others = others;
  }

  /** `typed`: the character, where the key has one; whether the picture is to be painted anew. */
  press(typed: string | undefined, name: string, now: number): boolean {
    const { state } = this;
    if (state.prompt.isOpen) return this.ownLine(typed, name);
    if (now - state.promptTaken < typesOnFor) return false;
    const { ask } = state;
    if (ask?.shown.answers.includes('value') && this.number(ask.shown.id, typed, name)) return true;
    const answer = typed === undefined ? undefined : answerOfKey(typed, ask?.shown.answers ?? []);
    if (ask && answer) this.take({ kind: 'answer', id: ask.shown.id, answer });
    else if (typed === '?') state.explains = !state.explains;
    else if (typed === ownLineKey && state.openPrompt()) return true;
    else return this.others(typed !== undefined && typed >= ' ' ? typed : name);
    return true;
  }

  /** Digits are gathered and shown until Enter gives them; whether the key belonged to a number. */
  private number(id: number, typed: string | undefined, name: string): boolean {
    const { state } = this;
    const value = typedNumber(state.typed);
    if (typed !== undefined && /^[-+.,\d]$/.test(typed)) state.typed += typed;
    else if (name === 'backspace') state.typed = state.typed.slice(0, -1);
    else if (isEnter(name) && value !== undefined) this.take({ kind: 'answer', id, answer: 'value', value });
    else return false;
    return true;
  }

  /** While its prompt is open every key belongs to it. */
  private ownLine(typed: string | undefined, name: string): boolean {
    const { state } = this;
    if (name === 'escape' || isEnter(name)) {
      const reply = state.prompt.entered(name === 'escape' ? '' : state.typed);
      state.typed = '';
      if (reply) this.take(reply);
    } else if (name === 'backspace') state.typed = state.typed.slice(0, -1);
    else if (typed !== undefined && typed >= ' ') state.typed += typed;
    return true;
  }
}

/** The terminal library tells of Enter twice, once as `return`: taken for two, it would answer what the first one leads to. */
const isEnter = (name: string): boolean => name === 'enter';
