import type { AnyCheck, CheckRun } from '../diagnose/checks/any-check.ts';
import { whileOut } from '../diagnose/judging/still-out.ts';
import { StreamNotes } from '../diagnose/judging/stream-notes.ts';
import { withLastTold } from '../diagnose/signal/last-told.ts';
import { type Ask, type AskEnd, subjectOf } from '../model/ask.ts';
import type { InputName, Machine, Subject } from '../model/machine.ts';
import type { Danger, Known, Scene } from '../model/procedure.ts';
import type { Reading, StatusReading } from '../model/reading.ts';
import type { OutItem } from '../model/session-facts.ts';
import type { Millis, Seconds } from '../model/units.ts';
import type { CheckName, Verdict } from '../model/verdict.ts';
import type { CircuitsKnown } from './circuits-known.ts';
import { registerAfter, subjectsOut } from './register.ts';

export interface CourseOptions {
  readonly machine: Machine;
  readonly checks: readonly AnyCheck[];
  readonly presses: number;
  readonly rest: Seconds;
  readonly only: readonly Subject[] | undefined;
  readonly cycles?: number | undefined;
  readonly program?: string | undefined;
  /** Gives a fault all that could have been seen just so. Nothing else depends on it: undefined, faults come without. */
  readonly explain: CircuitsKnown['possibleCauses'] | undefined;
}

/**
 * The checks one after the other, fed with readings and with how each ask ended. It knows no clock, file or port: a live session
 * and a saved one drive the very same course, which is why they come to the same verdicts.
 */
export class Course {
  private readonly options: CourseOptions;
  private readonly remaining: AnyCheck[];
  private run: CheckRun | undefined;
  private running: CheckName | undefined;
  private known: Known = {
    restHeard: false,
    flickering: [],
    answering: {},
    restInDoubt: [],
    touchedAsked: [],
    motorsOff: false,
    verdicts: [],
    motion: { stop: undefined, motorsOn: false, free: [], held: {}, tried: {} },
  };
  private status: StatusReading | undefined;
  private inputs: readonly InputName[] = [];
  private open:
    | { readonly from: Millis; readonly lead: StatusReading | undefined; readonly readings: Reading[] }
    | undefined;
  private readonly notes = new StreamNotes();
  private ask: Ask | undefined;
  private reopened = false;
  register: readonly OutItem[] = [];

  constructor(options: CourseOptions) {
    this.options = options;
    this.remaining = [...options.checks];
  }

  /** The ask that waits to be put or to end. */
  get pending(): Ask | undefined {
    return this.ask;
  }

  /** Every check has been gone through. */
  get isOver(): boolean {
    return this.ask === undefined && this.run === undefined && this.remaining.length === 0;
  }

  /** The last status since the stream was last interrupted, what it leaves untold as it was last told. */
  get lastStatus(): StatusReading | undefined {
    return this.status;
  }

  /** Returns what the person must be told at once, while an ask is open. */
  reading(reading: Reading): readonly Danger[] {
    this.notes.take(reading);
    if (reading.kind === 'gap') this.status = undefined;
    if (reading.kind === 'status') this.status = withLastTold(reading, this.status);
    if (reading.kind === 'declared') this.inputs = reading.inputs;
    if (!this.open) return [];
    this.open.readings.push(reading);
    return this.run?.guard?.feed(reading) ?? [];
  }

  /** Begins with the first check; wants the stream to be there already. Verdicts come at once where nothing needs asking. */
  start(): readonly Verdict[] {
    return this.run || this.ask ? [] : this.onward();
  }

  /** The ask is put: its window opens. */
  put(at: Millis): void {
    this.open = { from: at, lead: this.status, readings: [] };
  }

  /** The ask ended: its window closes, the procedure goes on, and what it thereby finished is judged. */
  end(end: AskEnd, at: Millis): readonly Verdict[] {
    const { ask, open, run } = this;
    if (!ask || !run) return [];
    this.register = registerAfter(this.register, ask, end);
    this.open = undefined;
    const { from, lead, readings } = open ?? { from: at, lead: this.status, readings: [] };
    this.ask = run.next({ ...end, window: { from, to: at, lead, readings } });
    return this.ask ? [] : [...this.finishCheck(run), ...this.onward()];
  }

  /**
   * An ask outside the checks ended (after a resume): the register learns from it. A plug that was out when the session broke off
   * and may not be out any more spoils its row, which begins anew. Returns undefined where nothing is begun anew.
   */
  aside(aside: Ask, end: AskEnd, at: Millis): readonly Verdict[] | undefined {
    const isStillOut = aside.action === 'confirm' && aside.topic === 'still-out';
    if (!isStillOut || end.by === 'gap') return undefined;
    this.register = registerAfter(this.register, aside, end);
    const isItsRow = this.ask && subjectOf(this.ask) === subjectOf(aside);
    return end.answer === 'yes' || !isItsRow ? undefined : this.end({ by: 'gap' }, at);
  }

  /**
   * A session that came to its end with plugs out is gone on with: the checks of broken wires and of the stop once more, for what
   * these plugs took along. Nothing to do, and no verdicts, where there is more to come anyway or everything is in.
   */
  reopen(): readonly Verdict[] {
    if (!this.isOver || this.register.length === 0) return [];
    const only = subjectsOut(this.register, this.options.machine);
    for (const check of this.options.checks.filter(({ name }) => name === 'open-wire' || name === 'stop'))
      this.remaining.push({ name: check.name, begin: (scene) => check.begin({ ...scene, only }) });
    this.reopened = true;
    return this.onward();
  }

  /** Broken off: what was kept is judged, everything else comes out as not tested. */
  stop(): readonly Verdict[] {
    const verdicts = this.run ? [...this.finishCheck(this.run)] : [];
    for (let check = this.remaining.shift(); check; check = this.remaining.shift()) {
      verdicts.push(...check.begin(this.scene()).verdicts());
    }
    this.ask = undefined;
    this.run = undefined;
    // What was found before it was opened again stands until something better is.
    return this.reopened ? verdicts.filter(({ missing }) => !missing.includes('stopped')) : verdicts;
  }

  private onward(): readonly Verdict[] {
    const verdicts: Verdict[] = [];
    for (let check = this.remaining.shift(); check; check = this.remaining.shift()) {
      this.run = check.begin(this.scene());
      this.running = check.name;
      this.ask = this.run.start();
      if (this.ask) return verdicts;
      verdicts.push(...this.finishCheck(this.run));
    }
    return verdicts;
  }

  private finishCheck(run: CheckRun): readonly Verdict[] {
    const verdicts = this.withCauses(run.verdicts());
    const stream = this.running ? this.notes.verdict(this.running) : [];
    this.known = {
      ...this.known,
      ...run.known(),
      verdicts: [...this.known.verdicts, ...verdicts],
    };
    this.run = undefined;
    return [...verdicts, ...stream];
  }

  /** Of what went wrong, with everything that could have been seen just so. */
  private withCauses(verdicts: readonly Verdict[]): readonly Verdict[] {
    const { explain } = this.options;
    if (!explain) return verdicts;
    return verdicts.map((verdict) => {
      const possible = explain(verdict, this.known.verdicts, this.options.machine);
      return possible ? { ...verdict, facts: { ...verdict.facts, possible } } : verdict;
    });
  }

  /** A verdict as it may be told while something is out. */
  asThingsAre(verdict: Verdict): Verdict {
    return whileOut(verdict, this.register, new Set(subjectsOut(this.register, this.options.machine)));
  }

  private scene(): Scene {
    const { machine, presses, rest, only, checks, cycles, program } = this.options;
    return {
      machine,
      presses,
      rest,
      only,
      cycles,
      program,
      out: this.register,
      checks: checks.map((check) => check.name),
      known: this.known,
      now: this.status,
      streamInputs: this.inputs,
    };
  }
}
