import { type Answer, type AskEnd, answersTo, toldAs } from '../../model/ask.ts';
import type { Machine } from '../../model/machine.ts';
import type { Line } from '../../model/reading.ts';
import { inMillis, type Millis, ms } from '../../model/units.ts';
import { askWords } from '../../words/ask-words.ts';
import type { Face, Reply } from '../operator.ts';
import type { SessionClock } from '../session-clock.ts';
import type { LearnEnd, Learning, LearnStep } from './steps.ts';
import type { Study } from './study.ts';

/** After "done" the stream is heard a little longer: reports are late, and contacts bounce. */
const heardOn = ms(1200);

export interface TalkParts<Result> {
  readonly course: Learning<Result>;
  readonly study: Study;
  readonly machine: Machine;
  readonly face: Face;
  readonly clock: SessionClock;
  /** Undefined: the person ended it. */
  readonly onOver: (result: Result | undefined) => void;
}

/** Puts the asks of learning to a person one at a time. Nothing in the stream ends one, for nobody knows yet how to read it. */
export class LearnTalk<Result> {
  private readonly parts: TalkParts<Result>;
  private open: { readonly id: number; readonly step: LearnStep; readonly from: Millis } | undefined;
  private said: { readonly answer: Answer; readonly at: Millis } | undefined;
  private nextId = 1;
  private begun = false;
  private over = false;
  private timer: () => void = () => {};

  constructor(parts: TalkParts<Result>) {
    this.parts = parts;
  }

  heard(line: Line): void {
    if (this.over) return;
    this.parts.study.line(line, this.open?.step.meaning !== undefined);
    if (this.begun) return;
    this.begun = true;
    this.goOn(this.parts.course.next());
  }

  /** What moves just now, if anything does, moves because it was asked for. */
  get isMoving(): boolean {
    return this.open?.step.ask.action === 'move' && this.said === undefined;
  }

  gap(): void {
    if (this.open) this.end({ by: 'gap' });
  }

  stop(): void {
    if (this.over) return;
    this.over = true;
    this.timer();
    this.parts.onOver(undefined);
  }

  reply(reply: Reply): void {
    if (this.over) return;
    if (reply.kind === 'gone') this.stop();
    else if (reply.kind === 'wrong') this.refuse(reply.found);
    else if (reply.kind !== 'answer') this.refuse('a line of your own');
    else if (reply.id !== this.open?.id) this.answeredLate(reply.id, reply.answer);
    else this.answered(reply.answer);
  }

  private answeredLate(id: number, answer: string): void {
    if (!(id > 0 && id < this.nextId)) this.refuse(`an answer to ask ${id}`);
    else if (!this.open && answer === 'stop') this.stop();
  }

  private answered(answer: string): void {
    const { open } = this;
    const word = open && answersTo(open.step.ask).find((each) => each === answer);
    if (!open || !word) {
      this.refuse(answer);
      return;
    }
    if (word === 'stop') {
      this.parts.face.show({ kind: 'ended', id: open.id, by: 'answer', answer: 'stop' });
      this.stop();
      return;
    }
    const at = this.parts.clock.now();
    this.said = { answer: word, at };
    if (open.step.ask.action === 'hands-off' && word === 'done') return;
    this.timer();
    const end: AskEnd = { by: 'answer', ...toldAs(word, undefined), answeredAt: at };
    if (open.step.meaning === undefined) this.end(end);
    else this.timer = this.parts.clock.after(heardOn, () => this.end(end));
  }

  private refuse(found: string): void {
    const allowed = this.open ? answersTo(this.open.step.ask) : [];
    this.parts.face.show({ kind: 'refused', id: this.open?.id, found, allowed });
  }

  private goOn(next: IteratorResult<LearnStep, Result>): void {
    if (this.over) return;
    if (next.done) {
      this.over = true;
      this.parts.onOver(next.value);
      return;
    }
    const { face, machine, clock } = this.parts;
    const { ask } = next.value;
    const id = this.nextId++;
    this.said = undefined;
    this.open = { id, step: next.value, from: clock.now() };
    // Only rest is over when its time is: a person may take as long as she needs.
    if (ask.action === 'hands-off')
      this.timer = clock.after(inMillis(ask.seconds), () => this.end({ by: 'time' }));
    const { text, cautions } = askWords(ask, machine);
    face.show({ kind: 'ask', id, ask, text, cautions, answers: answersTo(ask) });
  }

  private end(end: AskEnd): void {
    const { open } = this;
    if (!open || this.over) return;
    this.timer();
    this.open = undefined;
    const { study, face, course, clock } = this.parts;
    const span = { from: open.from, to: clock.now() };
    const isDone = end.by === 'time' || end.answer === 'done';
    study.close(open.step.meaning && isDone ? { ...open.step.meaning, ...span } : undefined);
    face.show({
      kind: 'ended',
      id: open.id,
      by: end.by,
      ...(end.answer !== undefined && { answer: end.answer }),
    });
    const told: LearnEnd = { ...end, ...span };
    this.goOn(course.next(told));
  }
}
