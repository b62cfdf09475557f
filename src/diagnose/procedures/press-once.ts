import type { PressAsk } from '../../model/ask.ts';
import type { InputName, Switch } from '../../model/machine.ts';
import type { Ended } from '../../model/procedure.ts';
import type { CheckName, Missing, TraceLabel } from '../../model/verdict.ts';
import type { Pressed } from '../judging/press-evidence.ts';
import { longestHoleForAbsence, rowAttempts, timeToPress } from '../limits.ts';
import { excursions } from '../signal/excursion.ts';
import { longestSilence, longestUntold, resolutionOf } from '../signal/resolution.ts';
import { traceOf } from '../signal/trace.ts';
import { inputsOf } from '../signal/track.ts';
import { type Asking, type Latest, refusal } from './asking.ts';
import { isHeardAfter, letGo } from './let-go.ts';
import { pressFromRest } from './press-from-rest.ts';

/** What one press came to. */
export type PressOutcome = Pressed | { readonly kind: 'refused'; readonly why: Missing };

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
  let why: Missing;
  do {
    attempts++;
    const faultBefore = latest.status?.activity === 'fault';
    const put = yield* pressFromRest(ask, pressed, latest);
    if (put === 'not-from-rest') return { kind: 'refused', why: 'rest-in-doubt' };
    const unseen = refusal(put) ?? (put.by === 'gap' ? 'stream-broke-off' : blindness(put, pressed, deaf));
    if (!unseen) return yield* outcome(pressed, press, put, faultBefore, latest);
    why = unseen;
    const again = why === 'stream-too-slow' || (why === 'stream-broke-off' && press.onGap === 'repeat');
    if (!again) break;
  } while (attempts < rowAttempts);
  return { kind: 'refused', why };
}

/** Nothing was seen, and a whole press could have passed: in a hole of the stream, or while it left the input untold. */
function blindness(
  { window }: Ended,
  { input }: Switch,
  deaf: readonly InputName[],
): 'stream-too-slow' | 'input-not-reported' | undefined {
  if (excursions(window, deaf).length > 0) return undefined;
  if (longestSilence(window) > longestHoleForAbsence) return 'stream-too-slow';
  const isUntold = inputsOf(window).includes(input) && longestUntold(window, input) > longestHoleForAbsence;
  return isUntold ? 'input-not-reported' : undefined;
}

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
