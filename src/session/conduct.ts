import type { Ask, AskEnd } from '../model/ask.ts';
import type { Reading } from '../model/reading.ts';
import { type Millis, ms } from '../model/units.ts';
import type { Verdict } from '../model/verdict.ts';
import { OpenAsk } from './asks-open.ts';
import type { ConductParts } from './conduct-parts.ts';
import { tellDanger } from './danger-told.ts';
import { EdgeListener } from './heard.ts';
import { LookTimer } from './look-timer.ts';
import type { Reply } from './operator.ts';
import { OutTold } from './out-told.ts';
import { isRefusedCondition, resumeAsks } from './resume-asks.ts';
import { shownAsk } from './shown-ask.ts';
import { isGap } from './stream-reader.ts';
import { VerdictBook } from './verdict-book.ts';

type Answered = Extract<Reply, { readonly kind: 'answer' }>;

/** Puts the course's asks to a person one at a time, closes each by what is seen, said or timed out, and keeps the journal. */
export class Conduct {
  private readonly parts: ConductParts;
  private readonly edges = new EdgeListener();
  private readonly book: VerdictBook;
  private readonly outs: OutTold;
  /** After a resume, what must be confirmed before anything else. */
  private readonly asides: Ask[];
  private open: OpenAsk | undefined;
  private nextId: number;
  private again: number | undefined;
  private streamIsThere = false;
  private readonly looks: LookTimer;
  private begun: boolean;
  private over = false;

  constructor(parts: ConductParts) {
    const { past, course, face, recorder, clock, machine } = parts;
    this.parts = parts;
    this.nextId = (past?.lastId ?? 0) + 1;
    this.again = past?.inFlight?.id;
    this.looks = new LookTimer(clock, () => this.look());
    this.outs = new OutTold(face, machine);
    this.book = new VerdictBook(
      face,
      (verdicts) => recorder.verdicts(verdicts, clock.now()),
      (verdict) => course.asThingsAre(verdict),
    );
    if (past) this.book.restore(past);
    if (past) this.book.give(course.reopen());
    this.begun = course.pending !== undefined || course.isOver;
    this.asides = past ? [...resumeAsks(course, machine)] : [];
  }

  /** What one capture entry said. All of it counts before anything is concluded, as it will when the session is read again. */
  heard(readings: readonly Reading[]): void {
    if (this.over) return;
    for (const reading of readings) {
      const dangers = this.parts.course.reading(reading);
      if (this.open) for (const each of dangers) tellDanger(this.parts, this.open.id, each, this.now());
      this.open?.feed(reading);
      this.parts.face.show({ kind: 'reading', reading });
      for (const heard of this.edges.take(reading)) if (this.open) this.parts.face.show(heard);
      if (isGap(reading)) this.streamIsThere = false;
      if (reading.kind === 'status') this.streamIsThere = true;
    }
    if (this.open && readings.some(isGap)) this.end({ by: 'gap' });
    this.look();
  }

  /** A person, or a program in her place, said something. */
  reply(reply: Reply): void {
    if (this.over) return;
    if (reply.kind === 'gone') this.stop();
    else if (reply.kind === 'wrong') this.refuse(reply.found);
    else if (reply.kind !== 'answer') this.refuse('a line of your own');
    else if (reply.id !== this.open?.id) this.answeredLate(reply.id, reply.answer);
    else this.answered(this.open, reply);
  }

  /** The person ends here; what she already gave is kept and can be gone on with. */
  stop(): void {
    if (this.over) return;
    if (this.open) this.close(this.open, { by: 'answer', answer: 'stop' });
    this.book.giveForNow(this.parts.course.stop());
    this.finish(true);
  }

  private answered(open: OpenAsk, { answer, value }: Answered): void {
    const word = open.wordOf(answer, value);
    if (!word) {
      this.refuse(value === undefined ? answer : `${answer} ${value}`);
      return;
    }
    const number = value === undefined ? {} : { value };
    this.parts.recorder.note<'answer'>({ kind: 'answer', id: open.id, answer, ...number }, this.now());
    if (word === 'stop') {
      this.stop();
      return;
    }
    open.say(word, this.now(), value);
    this.look();
  }

  /** To an ask that has ended: written down and ignored, but for "stop" while nothing is asked. */
  private answeredLate(id: number, answer: string): void {
    if (!(id > 0 && id < this.nextId)) {
      this.refuse(`an answer to ask ${id}`);
      return;
    }
    this.parts.recorder.note<'answer'>({ kind: 'answer', id, answer, ignored: true }, this.now());
    if (!this.open && answer === 'stop') this.stop();
  }

  private refuse(found: string): void {
    this.parts.face.show({ kind: 'refused', id: this.open?.id, found, allowed: this.open?.answers ?? [] });
  }

  private look(): void {
    if (this.over) return;
    const end = this.open?.endAt(this.now());
    if (end) this.end(end);
    if (this.open?.isWatchedOn) this.looks.soon();
    if (!this.open && this.streamIsThere && !this.over) this.goOn();
  }

  private goOn(): void {
    const { course } = this.parts;
    const aside = this.asides.shift();
    if (aside) {
      this.put(aside, undefined);
      return;
    }
    if (!this.begun) {
      this.begun = true;
      this.parts.recorder.note<'begun'>({ kind: 'begun' }, this.now());
      this.book.give(course.start());
    }
    if (course.pending) {
      const { again } = this;
      this.again = undefined;
      course.put(this.now());
      this.put(course.pending, again);
    } else if (course.isOver) this.finish(false);
  }

  private put(ask: Ask, again: number | undefined): void {
    const { recorder, face, course, machine } = this.parts;
    this.outs.tell(course.register, ask);
    const id = this.nextId++;
    const shown = shownAsk(id, ask, machine, again);
    const { text, cautions } = shown;
    const at = this.now();
    const open = new OpenAsk(id, ask, at, course.lastStatus);
    this.open = open;
    recorder.note<'ask'>({ kind: 'ask', id, ...(again !== undefined && { again }), ask, text, cautions }, at);
    face.show(shown);
    if (open.deadline !== undefined) this.looks.at(ms(open.deadline - at));
  }

  private end(end: AskEnd): void {
    const { open } = this;
    if (!open) return;
    this.close(open, end);
    const { course } = this.parts;
    if (open.ask.check !== 'resume') this.book.give(course.end(end, this.now()));
    else if (end.by === 'gap') this.asides.unshift(open.ask);
    else if (isRefusedCondition(open.ask, end)) this.stop();
    else this.begunAnew(course.aside(open.ask, end, this.now()));
  }

  /** Where its row began anew, the ask that was in flight when the session broke off does not come again. */
  private begunAnew(verdicts: readonly Verdict[] | undefined): void {
    if (!verdicts) return;
    if (this.again !== undefined) this.noteEnd(this.again, { by: 'gap' });
    this.again = undefined;
    this.book.give(verdicts);
  }

  private close({ id }: OpenAsk, end: AskEnd): void {
    this.open = undefined;
    this.looks.cancel();
    this.noteEnd(id, end);
  }

  private noteEnd(id: number, { by, answer, value, answeredAt }: AskEnd): void {
    const told = { ...(answer !== undefined && { answer }), ...(value !== undefined && { value }) };
    const when = answeredAt === undefined ? {} : { answeredAt };
    this.parts.recorder.note<'ended'>({ kind: 'ended', id, by, ...told, ...when }, this.now());
    this.parts.face.show({ kind: 'ended', id, by, ...told });
  }

  private finish(stopped: boolean): void {
    this.over = true;
    this.outs.tell(this.parts.course.register, undefined);
    this.parts.onOver({ verdicts: this.book.settled(), stopped });
  }

  private now(): Millis {
    return this.parts.clock.now();
  }
}
