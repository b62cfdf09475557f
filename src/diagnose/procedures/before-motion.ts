import type { Late } from '../../model/ask.ts';
import { type Axis, type AxisLetter, allSwitches, type Subject } from '../../model/machine.ts';
import type { MotionKnown, Scene } from '../../model/procedure.ts';
import { mm, ms } from '../../model/units.ts';
import type { CheckName, Missing } from '../../model/verdict.ts';
import { timeToAnswer, timeToPlug } from '../limits.ts';
import { lastOf } from '../scope/last-verdict.ts';
import { rightAfterHalt } from './after-halt.ts';
import { type Asking, type Latest, refusal } from './asking.ts';
import { moveFirst } from './first-move.ts';
import { untilUnbroken } from './motors-off.ts';

/** Whether these axes may move, and what is known about moving from now on: it is handed to the next call and taught to later checks. */
export interface MayMove {
  readonly missing: Missing | undefined;
  readonly motion: MotionKnown;
}

/**
 * Before an axis moves: nothing hangs out, its switches were proved in this session, the stop was proved or a hard-wired one is told of, motor power is on and props
 * are out, and the way is free on either side. Each is asked once a session; what was refused once is not asked again.
 */
export function* beforeMotion(
  check: CheckName,
  axes: readonly AxisLetter[],
  scene: Scene,
  latest: Latest,
  motion: MotionKnown,
): Asking<MayMove> {
  if (motion.refused) return { missing: motion.refused, motion };
  if ((scene.out ?? []).length > 0) return { missing: 'something-out', motion };
  const unproved = axes.find((axis) => !switchesProved(axis, scene));
  if (unproved) return { missing: 'input-unproved', motion };
  const ready = yield* machineReady(check, scene, latest, motion);
  if (ready.refused) return { missing: ready.refused, motion: ready };
  let after = ready;
  for (const axis of axes) {
    after = yield* wayFree(check, axis, latest, after);
    if (!after.held[axis] && !after.tried[axis]) after = yield* tried(check, axis, scene, latest, after);
    const held = after.held[axis];
    if (held) return { missing: held, motion: after };
  }
  return { missing: undefined, motion: after };
}

function* tried(
  check: CheckName,
  axis: AxisLetter,
  scene: Scene,
  latest: Latest,
  motion: MotionKnown,
): Asking<MotionKnown> {
  const first = yield* moveFirst(check, axis, scene, latest);
  return typeof first === 'string'
    ? { ...motion, held: { ...motion.held, [axis]: first } }
    : { ...motion, tried: { ...motion.tried, [axis]: first } };
}

/** The stop, what the last motion left behind, then motor power. */
function* machineReady(
  check: CheckName,
  scene: Scene,
  latest: Latest,
  motion: MotionKnown,
): Asking<MotionKnown> {
  const stop = motion.stop ?? (yield* stopKnown(check, scene, latest));
  if (stop !== 'proved' && stop !== 'told') return { ...motion, refused: stop };
  const righted = yield* rightAfterHalt(check, scene, latest);
  if (righted.missing) return { ...motion, stop, motorsOn: false, refused: righted.missing };
  if (motion.motorsOn && !righted.letOut) return { ...motion, stop };
  const on = yield* untilUnbroken(
    { check, action: 'power', what: 'motors', to: 'on', seconds: timeToPlug },
    latest,
  );
  if (on.answer === 'done') return { ...motion, stop, motorsOn: true };
  return { ...motion, stop, refused: on.answer === 'skip' ? 'skipped' : 'motors-not-on' };
}

/** A stop input of the file must have passed its check; only where the file has none does a person's word stand in for it. */
function* stopKnown(check: CheckName, scene: Scene, latest: Latest): Asking<'proved' | 'told' | Missing> {
  const stops = allSwitches(scene.machine).filter(({ duty }) => duty.includes('stop'));
  if (stops.length > 0) {
    const passed = stops.every(({ subject }) => hasPassed('stop', subject, scene));
    return passed ? 'proved' : 'stop-not-proved';
  }
  const told = yield* untilUnbroken(
    { check, action: 'confirm', topic: 'hard-wired-stop', seconds: timeToAnswer },
    latest,
  );
  if (told.answer === 'yes') return 'told';
  return refusal(told) === 'skipped' ? 'skipped' : 'no-hard-wired-stop';
}

function* wayFree(
  check: CheckName,
  axis: AxisLetter,
  latest: Latest,
  motion: MotionKnown,
): Asking<MotionKnown> {
  if (motion.free.includes(axis) || motion.held[axis]) return motion;
  const ask = { check, action: 'confirm', topic: 'way-free', axis, seconds: timeToAnswer } as const;
  const { answer } = yield* untilUnbroken(ask, latest);
  if (answer === 'yes') return { ...motion, free: [...motion.free, axis] };
  const why: Missing = answer === 'skip' ? 'skipped' : 'way-not-free';
  return { ...motion, held: { ...motion.held, [axis]: why } };
}

/** Its home switches answered their presses, and no switch of the axis failed a check. */
export function switchesProved(axis: AxisLetter, scene: Scene): boolean {
  const mine = allSwitches(scene.machine).filter(
    (each) => each.axis === axis && (each.duty.includes('home') || each.duty.includes('limit')),
  );
  const homes = mine.filter(({ duty }) => duty.includes('home'));
  return (
    homes.every(({ subject }) => hasPassed('press', subject, scene)) &&
    mine.every(
      ({ subject }) =>
        lastOf('press', subject, scene)?.status !== 'failed' &&
        lastOf('open-wire', subject, scene)?.status !== 'failed',
    )
  );
}

function hasPassed(check: CheckName, subject: Subject, scene: Scene): boolean {
  const status = lastOf(check, subject, scene)?.status;
  return status === 'proved' || status === 'limited';
}

/** How late a warning comes: two reports as measured, and the way an axis goes meanwhile; undefined before anything was measured. */
export function lateOf(latest: Latest, axes: readonly Axis[]): Late | undefined {
  if (latest.period === undefined) return undefined;
  const after = ms(Math.ceil(2 * latest.period));
  const speeds = axes.flatMap(({ approachSpeed }) => approachSpeed ?? []);
  if (speeds.length < axes.length || speeds.length === 0) return { after };
  return { after, by: mm(Math.ceil((Math.max(...speeds) / 60_000) * after * 10) / 10) };
}
