import { type Ask, subjectOf } from '../../model/ask.ts';
import type { Machine } from '../../model/machine.ts';
import type { FaceEvent, ShownAsk } from '../../session/operator.ts';
import { longestOwnLine } from '../../session/own-line.ts';
import { askWords } from '../../words/ask-words.ts';
import { noticeWords } from '../../words/notice-words.ts';
import { ownLineWords } from '../../words/own-line-words.ts';
import { shortly } from '../../words/place.ts';
import { seenWords } from '../../words/seen-words.ts';
import { asTyped } from '../as-typed.ts';
import { causeLines } from '../faces/cause-lines.ts';
import { endedLine, heardLine, verdictLines } from '../faces/lines-text.ts';
import { isNotReached } from '../faces/not-reached.ts';
import { OwnLinePrompt } from '../faces/own-line-prompt.ts';
import { LiveInputs } from './live-inputs.ts';

/** The ask on the screen and since when it stands there (ms on the screen's own clock). */
export interface AskOnScreen {
  readonly shown: ShownAsk;
  /** The fewest words, and of them those that say where. */
  readonly short: string;
  readonly where: string | undefined;
  readonly since: number;
}

/** What happened last: something seen where it was expected, something elsewhere, or a plain message. */
export interface Echo {
  readonly kind: 'seen' | 'other' | 'said';
  readonly text: string;
  readonly at: number;
}

/** Everything the screen shows, kept up by the events of the session. It decides nothing. */
export class ScreenState {
  readonly inputs = new LiveInputs();
  readonly machine: Machine;
  ask: AskOnScreen | undefined;
  echo: Echo | undefined;
  /** The matter with the stream, as long as it lasts. */
  notice: string | undefined;
  /** What is unplugged, as long as something is. */
  out: string | undefined;
  /** The last verdict as lines. */
  verdict: readonly string[] = [];
  verdicts = 0;
  /** The person wants to see what the answers mean. */
  explains = false;

  /** Fills the whole screen until its ask ends. */
  danger: string | undefined;
  /** What has been typed of a number so far. */
  typed = '';

  /** The prompt for a line of the person's own, what is said in it, and when it was last taken away from her. */
  readonly prompt = new OwnLinePrompt();
  promptLines: readonly string[] = [];
  promptTaken = Number.NEGATIVE_INFINITY;

  private readonly rung = new Set<string>();

  constructor(machine: Machine) {
    this.machine = machine;
  }

  /** Takes an event at `now` and tells whether the bell is to ring. */
  take(event: FaceEvent, now: number): boolean {
    const wasOpen = this.prompt.isOpen;
    this.prompt.follow(event);
    if (wasOpen && !this.prompt.isOpen) this.promptTaken = now;
    switch (event.kind) {
      case 'ask':
        this.asked(event, now);
        return false;
      case 'ended':
        return this.ended(event, now);
      case 'heard':
        return this.heard(event, now);
      case 'verdict':
        if (isNotReached(event.verdict)) return false;
        this.verdict = verdictLines(event.verdict, this.machine, event.restored);
        this.verdicts += 1;
        return false;
      case 'cause':
        this.verdict = causeLines(event);
        return true;
      case 'danger':
        this.danger = event.text;
        return true;
      case 'refused':
        this.echo = { kind: 'said', text: `"${event.found}" is no answer here.`, at: now };
        return false;
      case 'own-line':
        this.promptLines = event.lines;
        if (event.step === 'over' && event.lines[0])
          this.echo = { kind: 'said', text: event.lines[0], at: now };
        return false;
      case 'notice':
        return this.noticed(event);
      case 'reading':
        this.inputs.take(event.reading);
        return false;
      case 'finished':
        this.ask = undefined;
        this.notice = `Finished. The report: ${event.report}`;
        return true;
    }
  }

  /** Where the ask lets a line of her own be sent; whether the prompt is open now. */
  openPrompt(): boolean {
    this.typed = '';
    this.promptLines = [ownLineWords.prompt(longestOwnLine), ...ownLineWords.cautions];
    return this.prompt.open(this.ask?.shown);
  }

  private asked(shown: ShownAsk, now: number): void {
    const subject = subjectOf(shown.ask);
    const where = subject === undefined ? undefined : shortly(subject, this.machine);
    this.ask = { shown, short: askWords(shown.ask, this.machine).short, where, since: now };
    this.explains = false;
    this.typed = '';
    this.notice = undefined;
    this.rung.clear();
  }

  private heard(event: Extract<FaceEvent, { readonly kind: 'heard' }>, now: number): boolean {
    const ask = this.ask?.shown.ask;
    const asked = ask && inputOf(ask);
    const isQuietWanted =
      ask?.action === 'hands-off' || (ask?.action === 'press' && ask.expect === 'no-answer');
    const isOther = isQuietWanted || (asked !== undefined && asked !== event.input);
    const wanted = isQuietWanted ? ' No change was expected.' : isOther ? ` Asked for was ${asked}.` : '';
    const text = `${heardLine(event)}${wanted}`;
    this.echo = { kind: isOther ? 'other' : 'seen', text, at: now };
    return this.ask !== undefined && this.isFirstOf(event.input);
  }

  /** One ring for each input that answers an ask, the moment it does. */
  private isFirstOf(input: string): boolean {
    if (this.rung.has(input)) return false;
    this.rung.add(input);
    return true;
  }

  private ended({ id, by, answer }: Extract<FaceEvent, { readonly kind: 'ended' }>, now: number): boolean {
    if (id !== this.ask?.shown.id) return false;
    const during = { ask: this.ask.shown.ask, moved: [...this.rung] };
    const text = endedLine({ by, ...(answer === undefined ? {} : { answer }) }, during);
    const { asExpected } = seenWords(during.ask, during.moved);
    const waited = by === 'seen' || answer === 'done';
    this.echo = { kind: waited && !asExpected ? 'other' : by === 'seen' ? 'seen' : 'said', text, at: now };
    this.ask = undefined;
    this.danger = undefined;
    return false;
  }

  private noticed({ topic, text }: Extract<FaceEvent, { readonly kind: 'notice' }>): boolean {
    if (topic === 'something-out')
      this.out = text === noticeWords['something-out']([], this.machine) ? undefined : text;
    else this.notice = asTyped(text);
    return topic === 'stream-lost';
  }
}

/** The input an ask is about, where it is about one. */
export const inputOf = (ask: Ask): string | undefined => subjectOf(ask)?.split('/')[0];
