import { type Answer, type Ask, toldAs } from '../model/ask.ts';
import { type Millis, ms } from '../model/units.ts';
import type { Verdict } from '../model/verdict.ts';
import type { CaptureWalk } from './capture-walk.ts';
import type { Course } from './course.ts';
import type { AskEnded, AskPut, JournalRecord } from './journal.ts';

/** Where a saved session stands once its journal has been walked through again. */
export interface Retraced {
  readonly verdicts: readonly Verdict[];
  /** Verdicts that the journal already holds, as `check subject`. */
  readonly journalled: ReadonlySet<string>;
  /** The ask that was put and did not end; it comes again. */
  readonly inFlight: AskPut | undefined;
  readonly lastId: number;
  /** The last moment that was read. */
  readonly lastAt: Millis;
  /** The first ask of the journal that the course would not have put: the capture or the journal was changed. */
  readonly parted: { readonly journal: Ask; readonly course: Ask | undefined } | undefined;
  /** How many journal records speak of no more entries than the capture holds. */
  readonly sound: number;
}

export const verdictKey = ({ check, subject }: Pick<Verdict, 'check' | 'subject'>): string =>
  `${check} ${subject}`;

/**
 * Walks a course through a saved session: the capture's entries up to each journal line, each ask closed as it was closed. The
 * course puts its own questions; the journal only says how they ended, and the two must agree on what was asked.
 */
export class Retrace {
  private readonly course: Course;
  private readonly lines: CaptureWalk;
  private readonly verdicts: Verdict[] = [];
  private readonly journalled = new Set<string>();
  private readonly open = new Map<number, AskPut>();
  private parted: Retraced['parted'];
  private lastId = 0;
  private lastAt = 0;
  private begun = false;

  /** `lines` gives its readings to the course by itself. */
  constructor(course: Course, lines: CaptureWalk) {
    this.course = course;
    this.lines = lines;
  }

  walk(records: readonly JournalRecord[]): Retraced {
    let sound = 0;
    for (const record of records) {
      this.readTo(record.lines);
      // It speaks of entries that never reached the disk: what it says has no ground, nor has what follows.
      if (record.lines > this.lines.count) break;
      sound++;
      this.lastAt = Math.max(this.lastAt, record.at);
      if (record.kind === 'begun') this.begin();
      if (record.kind === 'ask') this.put(record);
      if (record.kind === 'ended') this.end(record);
      if (record.kind === 'resumed') this.verdicts.push(...this.course.reopen());
      if (record.kind === 'verdict') this.journalled.add(verdictKey(record.verdict));
      if (this.parted) break;
    }
    if (!this.isSettled) this.readTo(Infinity);
    const { verdicts, journalled, lastId, parted } = this;
    const { lastAt } = this.lines;
    const inFlight = [...this.open.values()].findLast(({ ask }) => ask.check !== 'resume');
    return {
      verdicts,
      journalled,
      inFlight,
      lastId,
      lastAt: ms(Math.max(this.lastAt, lastAt)),
      parted,
      sound,
    };
  }

  private begin(): void {
    if (!this.begun) this.verdicts.push(...this.course.start());
    this.begun = true;
  }

  private put(record: AskPut): void {
    this.lastId = Math.max(this.lastId, record.id);
    if (record.again !== undefined) this.open.delete(record.again);
    this.open.set(record.id, record);
    if (record.ask.check === 'resume') return;
    // A journal of an earlier version says so by its first ask.
    this.begin();
    const { pending } = this.course;
    if (!pending || !sameAsk(pending, record.ask)) this.parted = { journal: record.ask, course: pending };
    else this.course.put(ms(record.at));
  }

  private end({ id, at, by, answer, value, answeredAt }: AskEnded): void {
    const asked = this.open.get(id);
    // Stopping answers nothing: the ask stays open and comes again.
    if (!asked || answer === 'stop') return;
    this.open.delete(id);
    const end = {
      by,
      ...toldAs(answer as Answer | undefined, value),
      ...(answeredAt !== undefined && { answeredAt: ms(answeredAt) }),
    };
    if (asked.ask.check !== 'resume') this.verdicts.push(...this.course.end(end, ms(at)));
    else this.begunAnew(this.course.aside(asked.ask, end, ms(at)));
  }

  private begunAnew(verdicts: readonly Verdict[] | undefined): void {
    if (!verdicts) return;
    this.open.clear();
    this.verdicts.push(...verdicts);
  }

  /** Where nothing is asked any more, nor can be, nothing hangs on what comes behind. */
  private get isSettled(): boolean {
    return this.course.isOver && this.course.register.length === 0;
  }

  private readTo(lines: number): void {
    this.lines.take(lines - this.lines.count);
  }
}

/** Compared as JSON, which is what the journal kept of it. */
const sameAsk = (a: Ask, b: Ask): boolean => canonical(a) === canonical(b);

function canonical(value: unknown): string {
  return JSON.stringify(value, (_key, inner: unknown) =>
    inner && typeof inner === 'object' && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
}
