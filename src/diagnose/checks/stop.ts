import type { Switch } from '../../model/machine.ts';
import type { Check, Ended, Procedure, Scene } from '../../model/procedure.ts';
import type { Verdict } from '../../model/verdict.ts';
import { withoutEvidence } from '../judging/status.ts';
import { judgeStop, type StopEvidence } from '../judging/stop-function.ts';
import { timeToAnswer, timeToPlug, timeToPress } from '../limits.ts';
import { type Asking, type Latest, refusal, switchesAsked } from '../procedures/asking.ts';
import { untilUnbroken } from '../procedures/motors-off.ts';
import { pressFromRest } from '../procedures/press-from-rest.ts';
import { takesAlong } from '../procedures/takes-along.ts';
import { excursions } from '../signal/excursion.ts';
import { traceOf } from '../signal/trace.ts';
import { sameState, stateIn } from '../signal/track.ts';

/**
 * Does the stop take the power away? A status bit that follows the button shows only that the button has a spare contact; that the
 * drives lost their power a person must see. And letting the button out again must start nothing (IEC 60204-1, 9.2 and 10.7).
 */
export const stop: Check<StopEvidence> = {
  name: 'stop',
  gather,
  judge,
  teaches: () => ({ motorsOff: false }),
};

const stopsAsked = (scene: Scene): readonly Switch[] =>
  switchesAsked(scene).filter(({ duty }) => duty.includes('stop'));

function* gather(scene: Scene): Procedure<StopEvidence> {
  const latest: Latest = { status: scene.now };
  for (const pressed of stopsAsked(scene)) yield { keep: yield* stopOf(pressed, scene, latest) };
}

function* stopOf(pressed: Switch, scene: Scene, latest: Latest): Asking<StopEvidence> {
  const { subject, input } = pressed;
  const known = scene.known.answering[subject] ?? input;
  const base = {
    subject,
    input,
    target: known,
    missing: undefined,
    flickers: scene.known.flickering.includes(known),
    latches: undefined,
    move: undefined,
    power: undefined,
    restarted: undefined,
    traces: [],
  };
  if (scene.out?.some((each) => takesAlong(each, pressed, scene.machine)))
    return { ...base, missing: 'something-out' };
  const clear = yield* untilUnbroken(
    { check: 'stop', action: 'confirm', topic: 'stop-area-clear', subject, seconds: timeToAnswer },
    latest,
  );
  if (clear.answer !== 'yes') return { ...base, missing: refusal(clear) ?? 'not-confirmed' };
  const on = yield* untilUnbroken(
    { check: 'stop', action: 'power', what: 'motors', to: 'on', seconds: timeToPlug },
    latest,
  );
  if (on.answer !== 'done') return { ...base, missing: refusal(on) ?? 'not-confirmed' };
  const press = {
    check: 'stop',
    action: 'press',
    subject,
    round: 1,
    rounds: 1,
    expect: 'answer',
    deaf: scene.known.flickering,
    seconds: timeToPress,
  } as const;
  let operated = yield* pressFromRest(press, pressed, latest);
  while (operated !== 'not-from-rest' && operated.by === 'gap')
    operated = yield* pressFromRest(press, pressed, latest);
  if (operated === 'not-from-rest') return { ...base, missing: 'rest-in-doubt' };
  const why = refusal(operated);
  if (why) return { ...base, missing: why };
  const moved = excursions(operated.window, scene.known.flickering);
  const move =
    moved.find((each) => each.input === known) ?? (scene.known.answering[subject] ? undefined : moved[0]);
  const target = move?.input ?? known;
  if (!move && operated.by === 'time') return { ...base, missing: 'no-answer-given' };
  const look = yield* untilUnbroken(
    { check: 'stop', action: 'look', topic: 'power', subject, seconds: timeToAnswer },
    latest,
  );
  const state = latest.status && stateIn(latest.status, target);
  const latched = !move || !state || !sameState(move.rest, state);
  // The stream cannot tell a button that jumped out from one that was turned out at once.
  const jumped = latched
    ? undefined
    : yield* untilUnbroken(
        { check: 'stop', action: 'confirm', topic: 'stayed-in', subject, seconds: timeToAnswer },
        latest,
      );
  const release = {
    check: 'stop',
    action: 'release',
    subject,
    watch: [target],
    why: 'latched',
    seconds: timeToPlug,
  } as const;
  const out = latched ? yield* untilUnbroken(release, latest) : undefined;
  // What came back can only be said of a button that was let out.
  const isOut = !out || out.by === 'seen' || out.answer === 'done';
  const stayed = isOut
    ? yield* untilUnbroken(
        { check: 'stop', action: 'confirm', topic: 'stayed-off', subject, seconds: timeToAnswer },
        latest,
      )
    : undefined;
  return {
    ...base,
    target,
    latches: latched || jumped?.answer === 'yes' ? true : jumped?.answer === 'no' ? false : undefined,
    move,
    power: look.answer,
    restarted: restartedIn(out, stayed),
    traces: [
      traceOf(operated.window, 'stop', [target]),
      ...(out ? [traceOf(out.window, 'unlatch', [target])] : []),
    ],
  };
}

/** Undefined: nobody can say. */
function restartedIn(out: Ended | undefined, stayed: Ended | undefined): boolean | undefined {
  if (stayed?.answer === 'no' || [out, stayed].some((each) => each && movedAfter(each))) return true;
  return stayed?.answer === 'yes' ? false : undefined;
}

/** Commanded motion by itself after the button is let out. */
const movedAfter = ({ window }: Ended): boolean =>
  window.readings.some(
    (each) => each.kind === 'status' && (each.activity === 'moving' || each.activity === 'homing'),
  );

function judge(kept: readonly StopEvidence[], scene: Scene): readonly Verdict[] {
  return stopsAsked(scene).map(({ subject }) => {
    const item = kept.find((each) => each.subject === subject);
    return item ? judgeStop(item) : withoutEvidence({ check: 'stop', subject }, 'stopped');
  });
}
