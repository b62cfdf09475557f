import type { PressAsk } from '../../model/ask.ts';
import type { InputName, Switch } from '../../model/machine.ts';
import type { Ended } from '../../model/procedure.ts';
import type { CheckName, Missing, Resolution, Trace, TraceLabel } from '../../model/verdict.ts';
import { longestHoleForAbsence, rowAttempts, timeToPress } from '../limits.ts';
import { type Excursion, excursions } from '../signal/excursion.ts';
import { longestSilence, resolutionOf } from '../signal/resolution.ts';
import { traceOf } from '../signal/trace.ts';
import { type Asking, type Latest, refusal } from './asking.ts';
import { isHeardAfter, letGo } from './let-go.ts';
import { pressFromRest } from './press-from-rest.ts';

/** What one press came to. */
export type PressOutcome = Pressed | { readonly kind: 'refused'; readonly why: Missing };

export interface Pressed {
  readonly kind: 'pressed';
  /** The inputs that moved, first mover first; none: nothing answered. */
  readonly moved: readonly Excursion[];
  /** The person said "done": where nothing moved, only this shows that anything was pressed. */
  readonly confirmed: boolean;
  /** "Done" was said, not only seen. */
  readonly said: boolean;
  /** The controller went into fault on this press: it acts on the input. */
  readonly halted: boolean;
  /** Inputs that stayed away from rest though the person had let go. */
  readonly stuck: readonly InputName[];
  readonly resolution: Resolution | undefined;
  readonly trace: Trace;
}

export interface Press extends Omit<PressAsk, 'action' | 'subject'> {
  readonly check: CheckName;
  readonly label: TraceLabel;
  readonly onGap: 'repeat' | 'give-up';
}

/** Asks for one press of a switch, then for what it leaves to be done: clearing a halt, letting go. */
export function* pressOnce(pressed: Switch, press: Press, latest: Latest): Asking<PressOutcome> {
  const { check, round, rounds, expect, deaf } = press;
  const ask = {
    check,
    action: 'press',
    subject: pressed.subject,
    round,
    rounds,
    expect,
    deaf,
    seconds: timeToPress,
  } as const;
  let attempts = 0;
  let ended: Ended;
  do {
    attempts++;
    const faultBefore = latest.status?.activity === 'fault';
    const put = yield* pressFromRest(ask, pressed, latest);
    if (put === 'not-from-rest') return { kind: 'refused', why: 'rest-in-doubt' };
    ended = put;
    const why = refusal(ended);
    if (why) return { kind: 'refused', why };
    if (ended.by !== 'gap' && !isAbsenceBlind(ended, deaf))
      return yield* outcome(pressed, press, ended, faultBefore, latest);
  } while (attempts < rowAttempts && (press.onGap === 'repeat' || ended.by !== 'gap'));
  return { kind: 'refused', why: ended.by === 'gap' ? 'stream-broke-off' : 'stream-too-slow' };
}

/** Nothing seen, but the stream had a hole in which a whole press could have passed. */
const isAbsenceBlind = (ended: Ended, deaf: readonly InputName[]): boolean =>
  longestSilence(ended.window) > longestHoleForAbsence && excursions(ended.window, deaf).length === 0;

function* outcome(
  pressed: Switch,
  press: Press,
  ended: Ended,
  faultBefore: boolean,
  latest: Latest,
): Asking<Pressed> {
  const moved = excursions(ended.window, press.deaf);
  const confirmed = ended.answer === 'done' || ended.by === 'seen';
  const halted =
    !faultBefore && ended.window.readings.some((each) => each.kind === 'status' && each.activity === 'fault');
  const stuck = yield* letGo(
    pressed,
    press.check,
    moved,
    { halted, saidLetGo: isHeardAfter(ended), plugIsOut: press.expect === 'no-answer' },
    latest,
  );
  const cited = [...new Set([...moved.map((each) => each.input), pressed.input])];
  return {
    kind: 'pressed',
    moved,
    confirmed,
    said: ended.answer === 'done',
    halted,
    stuck,
    resolution: resolutionOf(ended.window),
    trace: traceOf(ended.window, press.label, cited),
  };
}
