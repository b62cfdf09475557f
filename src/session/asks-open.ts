import { type AskWatch, watchFor } from '../diagnose/watching.ts';
import { type Answer, type Ask, type AskEnd, answersTo, type ToldAnswer, toldAs } from '../model/ask.ts';
import type { Reading, StatusReading } from '../model/reading.ts';
import { inMillis, type Millis } from '../model/units.ts';

/** Asks that their time may end; the others wait for a person, however long she takes. */
const endedByTime: readonly Ask['action'][] = [
  'hands-off',
  'press',
  'release',
  'clear',
  'seek',
  'home',
  'move',
];
/** Asks after whose "done" the stream is watched a little longer. */
const watchedAfterDone: readonly Ask['action'][] = [
  'press',
  'release',
  'clear',
  'unplug',
  'replug',
  'jumper',
  'unjumper',
  'seek',
  'home',
  'move',
];

/** The one ask that is open, and when it is over. */
export class OpenAsk {
  readonly id: number;
  readonly ask: Ask;
  readonly answers: readonly Answer[];
  private readonly from: Millis;
  private readonly watch: AskWatch;
  private said: (ToldAnswer & { readonly answeredAt: Millis }) | undefined;

  constructor(id: number, ask: Ask, from: Millis, lead: StatusReading | undefined) {
    this.id = id;
    this.ask = ask;
    this.from = from;
    this.answers = answersTo(ask);
    this.watch = watchFor(ask, lead);
  }

  feed(reading: Reading): void {
    this.watch.feed(reading);
  }

  /** The answer meant, where this ask takes it; a number belongs to `value` and to nothing else. */
  wordOf(answer: string, value: number | undefined): Answer | undefined {
    const word = this.answers.find((each) => each === answer);
    return (word === 'value') === (value !== undefined) ? word : undefined;
  }

  say(answer: Answer, at: Millis, value?: number): void {
    this.said = { ...toldAs(answer, value), answeredAt: at };
  }

  /** When its time is up; undefined where only an answer ends it. */
  get deadline(): Millis | undefined {
    return endedByTime.includes(this.ask.action)
      ? ((this.from + inMillis(this.ask.seconds)) as Millis)
      : undefined;
  }

  /** It has been answered with "done" and is only watched a little longer. */
  get isWatchedOn(): boolean {
    return this.said !== undefined;
  }

  /** How it ended by `now`, or undefined while it is open. What the stream shows wins over what was said. */
  endAt(now: Millis): AskEnd | undefined {
    const { said } = this;
    if (this.watch.seen(now)) return { by: 'seen', ...said };
    if (said && this.isEnough(said.answer, said.answeredAt, now)) return { by: 'answer', ...said };
    if (this.deadline !== undefined && now >= this.deadline && !said) return { by: 'time' };
    if (this.ask.action === 'hands-off' && this.deadline !== undefined && now >= this.deadline)
      return { by: 'time', ...said };
    return undefined;
  }

  private isEnough(answer: Answer | undefined, at: Millis, now: Millis): boolean {
    if (answer !== 'done') return true;
    if (this.ask.action === 'hands-off') return false;
    return !watchedAfterDone.includes(this.ask.action) || this.watch.watchedEnough(now, at);
  }
}
