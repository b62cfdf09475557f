import type { InputName, Switch } from '../../model/machine.ts';
import type { Ended, Scene } from '../../model/procedure.ts';
import type { Missing, Trace } from '../../model/verdict.ts';
import { timeToAnswer, timeToPlug, timeToPress } from '../limits.ts';
import { type Excursion, excursions } from '../signal/excursion.ts';
import { traceOf } from '../signal/trace.ts';
import { agree, stateIn } from '../signal/track.ts';
import { type Asking, type Latest, refusal } from './asking.ts';
import { untilUnbroken } from './motors-off.ts';
import { pressFromRest } from './press-from-rest.ts';
import { takesAlong } from './takes-along.ts';

/** A stop that was pressed with its drives powered. */
export interface StopPress {
  /** The input that answered; where none did, the one that should have. */
  readonly target: InputName;
  /** How it moved with the button. */
  readonly move: Excursion | undefined;
  readonly trace: Trace;
}

/** Nothing that is out may take the stop along; everyone is clear, and the drives have the power that the stop is to take away. */
export function* readyForStop(pressed: Switch, scene: Scene, latest: Latest): Asking<Missing | undefined> {
  const { subject } = pressed;
  if (scene.out?.some((each) => takesAlong(each, pressed, scene.machine))) return 'something-out';
  const clear = yield* untilUnbroken(
    { check: 'stop', action: 'confirm', topic: 'stop-area-clear', subject, seconds: timeToAnswer },
    latest,
  );
  if (clear.answer !== 'yes') return refusal(clear) ?? 'not-confirmed';
  const on = yield* untilUnbroken(
    { check: 'stop', action: 'power', what: 'motors', to: 'on', seconds: timeToPlug },
    latest,
  );
  return on.answer === 'done' ? undefined : (refusal(on) ?? 'not-confirmed');
}

/** One press of the button, which stays in. Which input answered, or what is missing. */
export function* pressStop(pressed: Switch, scene: Scene, latest: Latest): Asking<StopPress | Missing> {
  const { subject, input } = pressed;
  const { flickering, answering } = scene.known;
  const press = {
    check: 'stop',
    action: 'press',
    subject,
    round: 1,
    rounds: 1,
    expect: 'answer',
    deaf: flickering,
    seconds: timeToPress,
  } as const;
  let operated = yield* pressFromRest(press, pressed, latest);
  while (operated !== 'not-from-rest' && operated.by === 'gap')
    operated = yield* pressFromRest(press, pressed, latest);
  if (operated === 'not-from-rest') return 'rest-in-doubt';
  const why = refusal(operated);
  if (why) return why;
  const known = answering[subject] ?? input;
  const moved = excursions(operated.window, flickering);
  const move = moved.find((each) => each.input === known) ?? (answering[subject] ? undefined : moved[0]);
  if (!move && operated.by === 'time') return 'no-answer-given';
  const target = move?.input ?? known;
  return { target, move, trace: traceOf(operated.window, 'stop', [target]) };
}

/** What letting the button out showed. */
export interface LetOut {
  /** It stayed in until it was let out; undefined: nobody could say. */
  readonly latches: boolean | undefined;
  /** Something started by itself; undefined: nobody could say. */
  readonly restarted: boolean | undefined;
  /** The input went back to its rest; undefined: it had never left it, or nothing is known of it. */
  readonly returned: boolean | undefined;
  readonly traces: readonly Trace[];
}

export function* letOut({ subject }: Switch, { target, move }: StopPress, latest: Latest): Asking<LetOut> {
  const isIn = !move || isBack(move, latest) !== true;
  const release = {
    check: 'stop',
    action: 'release',
    subject,
    watch: [target],
    why: 'latched',
    seconds: timeToPlug,
  } as const;
  let out = isIn ? yield* untilUnbroken(release, latest) : undefined;
  // Said to be out while the stream says in: once more, for a button that did not come all the way.
  if (move && out?.answer === 'done' && isBack(move, latest) === false)
    out = yield* untilUnbroken(release, latest);
  const latches = isIn ? true : yield* stayedIn(subject, latest);
  // What came back can only be said of a button that was let out.
  const isOut = !out || out.by === 'seen' || out.answer === 'done';
  const stayed = isOut
    ? yield* untilUnbroken(
        { check: 'stop', action: 'confirm', topic: 'stayed-off', subject, seconds: timeToAnswer },
        latest,
      )
    : undefined;
  const traces = out ? [traceOf(out.window, 'unlatch', [target])] : [];
  const returned = move && isOut ? isBack(move, latest) : undefined;
  return { latches, restarted: restartedIn(out, stayed), returned, traces };
}

/** Undefined where the last report did not tell of it. */
function isBack({ input, rest }: Excursion, { status }: Latest): boolean | undefined {
  const state = status && stateIn(status, input);
  return state && agree(rest, state);
}

/** The stream cannot tell a button that jumped out from one that was turned out at once. */
function* stayedIn(subject: Switch['subject'], latest: Latest): Asking<boolean | undefined> {
  const { answer } = yield* untilUnbroken(
    { check: 'stop', action: 'confirm', topic: 'stayed-in', subject, seconds: timeToAnswer },
    latest,
  );
  return answer === 'yes' ? true : answer === 'no' ? false : undefined;
}

function restartedIn(out: Ended | undefined, stayed: Ended | undefined): boolean | undefined {
  if (stayed?.answer === 'no' || [out, stayed].some((each) => each && movedAfter(each))) return true;
  return stayed?.answer === 'yes' ? false : undefined;
}

/** Commanded motion by itself after the button is let out. */
const movedAfter = ({ window }: Ended): boolean =>
  window.readings.some(
    (each) => each.kind === 'status' && (each.activity === 'moving' || each.activity === 'homing'),
  );
