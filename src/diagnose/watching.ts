import type { Ask } from '../model/ask.ts';
import type { InputName } from '../model/machine.ts';
import type { Reading, StatusReading } from '../model/reading.ts';
import { type Millis, ms } from '../model/units.ts';
import {
  holdsAtLatest,
  holdsAtVeryLatest,
  holdsFor,
  holdsOver,
  pressOver,
  watchAfterDone,
} from './limits.ts';
import { MotionWatch } from './motion-watch.ts';
import { isUntold } from './signal/last-told.ts';
import { isHeldLongEnough } from './signal/settled.ts';
import { agree, knownAfter, type State, sampleOfEdge, stateIn } from './signal/track.ts';

/** Watches the stream while one ask is open, reading by reading, and says when what was asked for has been seen. */
export interface AskWatch {
  feed(reading: Reading): void;
  /** The stream itself shows it done. */
  seen(now: Millis): boolean;
  /** The person said "done" at `answeredAt`: has the stream been watched long enough after it? */
  watchedEnough(now: Millis, answeredAt: Millis): boolean;
}

/** How an ask can end beside the person's other answers: see the table of actions in the operator protocol. */
export function watchFor(ask: Ask, lead: StatusReading | undefined): AskWatch {
  switch (ask.action) {
    case 'press':
      return new PressWatch(lead, ask.deaf);
    case 'release':
      return new ReleaseWatch(lead, ask.watch);
    case 'clear':
      return new ClearWatch(lead);
    case 'unplug':
    case 'replug':
    case 'jumper':
    case 'unjumper':
      return new SettleWatch(lead);
    case 'seek':
    case 'home':
    case 'move':
      return new MotionWatch(lead);
    default:
      return noWatch;
  }
}

const noWatch: AskWatch = { feed: () => {}, seen: () => false, watchedEnough: () => true };

/** The last known state of every input, and when it last changed. */
class States {
  private readonly now = new Map<InputName, State>();

  constructor(lead: StatusReading | undefined) {
    if (lead) this.take(lead, () => {});
  }

  take(reading: Reading, changed: (input: InputName, to: State) => void): void {
    if (reading.kind === 'status') {
      for (const input of reading.inputs) {
        const state = stateIn(reading, input);
        if (state) this.put(input, state, changed);
      }
    } else if (reading.kind === 'edge') {
      this.put(reading.input, sampleOfEdge(reading, this.now.get(reading.input)), changed);
    }
  }

  private put(input: InputName, to: State, changed: (input: InputName, to: State) => void): void {
    const before = this.now.get(input);
    this.now.set(input, knownAfter(to, before));
    if (before && !agree(before, to)) changed(input, to);
  }

  all(): ReadonlyMap<InputName, State> {
    return this.now;
  }
}

/** Seen when an input left its level, and every input that did has been back for longer than contacts bounce. */
class PressWatch implements AskWatch {
  private readonly states: States;
  private rest: ReadonlyMap<InputName, State>;
  private readonly deaf: readonly InputName[];
  private readonly left = new Set<InputName>();
  private lastChange: Millis | undefined;

  constructor(lead: StatusReading | undefined, deaf: readonly InputName[]) {
    this.states = new States(lead);
    this.rest = new Map(this.states.all());
    this.deaf = deaf;
  }

  feed(reading: Reading): void {
    this.states.take(reading, (input) => {
      if (this.deaf.includes(input)) return;
      this.left.add(input);
      this.lastChange = reading.arrived;
    });
    if (this.rest.size === 0) this.rest = new Map(this.states.all());
  }

  seen(now: Millis): boolean {
    if (this.lastChange === undefined || now - this.lastChange < pressOver) return false;
    return [...this.left].every((input) => {
      const rest = this.rest.get(input);
      const state = this.states.all().get(input);
      return !rest || !state || agree(rest, state);
    });
  }

  watchedEnough(now: Millis, answeredAt: Millis): boolean {
    return now - answeredAt >= watchAfterDone;
  }
}

/** Seen when a watched input left the level it was held at, and stays there. */
class ReleaseWatch implements AskWatch {
  private readonly states: States;
  private readonly watch: readonly InputName[];
  private lastChange: Millis | undefined;

  constructor(lead: StatusReading | undefined, watch: readonly InputName[]) {
    this.states = new States(lead);
    this.watch = watch;
  }

  feed(reading: Reading): void {
    this.states.take(reading, (input) => {
      if (this.watch.includes(input)) this.lastChange = reading.arrived;
    });
  }

  seen(now: Millis): boolean {
    return this.lastChange !== undefined && now - this.lastChange >= pressOver;
  }

  watchedEnough(now: Millis, answeredAt: Millis): boolean {
    return now - answeredAt >= watchAfterDone;
  }
}

/** Seen when the reported activity is no longer a fault. */
class ClearWatch implements AskWatch {
  private faulted: boolean;
  private cleared = false;

  constructor(lead: StatusReading | undefined) {
    this.faulted = lead?.activity === 'fault';
  }

  feed(reading: Reading): void {
    if (reading.kind !== 'status' || reading.activity === '?') return;
    if (reading.activity === 'fault') this.faulted = true;
    this.cleared = this.faulted && reading.activity !== 'fault';
  }

  seen(): boolean {
    return this.cleared;
  }

  watchedEnough(now: Millis, answeredAt: Millis): boolean {
    return this.cleared || now - answeredAt >= watchAfterDone;
  }
}

/** Never seen, only answered; then the levels must hold before they count, over reports that tell of every input. */
class SettleWatch implements AskWatch {
  private readonly states: States;
  private lastChange: Millis = ms(-Infinity);
  private readonly told: Millis[] = [];

  constructor(lead: StatusReading | undefined) {
    this.states = new States(lead);
  }

  feed(reading: Reading): void {
    this.states.take(reading, () => {
      this.lastChange = reading.arrived;
    });
    if (reading.kind !== 'status') return;
    const known = this.states.all();
    if (reading.inputs.every((input, i) => !known.has(input) || !isUntold(reading, i)))
      this.told.push(reading.arrived);
  }

  seen(): boolean {
    return false;
  }

  watchedEnough(now: Millis, answeredAt: Millis): boolean {
    const since = ms(Math.max(answeredAt, this.lastChange));
    const after = this.told.filter((arrived) => arrived >= answeredAt);
    const held = after.filter((arrived) => arrived >= since);
    if (now - since >= holdsFor && isHeldLongEnough(held)) return true;
    return now - answeredAt >= (after.length >= holdsOver ? holdsAtLatest : holdsAtVeryLatest);
  }
}
