import { weightOf } from '../../model/finding.ts';
import type { Axis } from '../../model/machine.ts';
import type { Ended, MotionKnown, Scene } from '../../model/procedure.ts';
import type { Verdict } from '../../model/verdict.ts';
import { lostIn, zeroSetIn } from '../homing/reference.ts';
import type { RepeatedHoming, RepeatItem } from '../judging/repeat.ts';
import { cyclesUsual, startPoints, timeToAnswer, timeToMove } from '../limits.ts';
import { wayGone } from '../motion/way-gone.ts';
import { unitOf } from '../scope/axes-asked.ts';
import { lastOf } from '../scope/last-verdict.ts';
import { type SeekRoles, seekRoles } from '../seek/roles.ts';
import { seekRun } from '../seek/run.ts';
import { resolutionOf } from '../signal/resolution.ts';
import { askLength } from './ask-length.ts';
import { type Asking, type Latest, put, refusal } from './asking.ts';
import { beforeMotion } from './before-motion.ts';
import { untilUnbroken } from './motors-off.ts';
import { gridOf, type WatchedHoming, watchHoming } from './watched-homing.ts';

/** Homes one axis again and again, from three start points in turn; undefined for an axis that has no home switch. */
export function* repeatAxis(
  axis: Axis,
  scene: Scene,
  latest: Latest,
  motion: MotionKnown,
): Asking<RepeatItem | undefined> {
  const roles = seekRoles(scene.machine, axis.letter, scene.known.answering);
  if (!roles || roles.home.length === 0) return undefined;
  const base = { axis: axis.letter, homings: [], alarms: [], lost: false, motion } as const;
  if (!cameHome(lastOf('homing', axis.letter, scene))) return { ...base, missing: 'homing-not-shown' };
  const may = yield* beforeMotion('repeat', [axis.letter], scene, latest, motion);
  if (may.missing) return { ...base, motion: may.motion, missing: may.missing };
  const gauge = yield* untilUnbroken(
    { check: 'repeat', action: 'confirm', topic: 'has-gauge', axis: axis.letter, seconds: timeToAnswer },
    latest,
  );
  const why = refusal(gauge);
  if (why === 'skipped' || why === 'cannot') return { ...base, motion: may.motion, missing: why };
  const homings: RepeatedHoming[] = [];
  let lost = false;
  const wanted = scene.cycles ?? cyclesUsual;
  for (let run = 0; run < wanted; run++) {
    const went = yield* goTo(axis, roles, startPoints[run % startPoints.length] ?? 0, latest);
    const homing = [{ axis: axis.letter, roles }];
    const watched = yield* watchHoming('repeat', axis.letter, homing, latest, may.motion);
    const { ended, guard } = watched;
    lost ||= zeroSetIn(went.window, axis) || lostIn([went.window, ...watched.brokenOff], roles.stops);
    const alarms = guard.alarmsOf(axis.letter);
    if (alarms.length > 0)
      return { ...base, homings, alarms, lost, motion: { ...may.motion, motorsOn: false } };
    const missing = refusal(ended) ?? (ended.by === 'gap' ? 'stream-broke-off' : undefined);
    if (missing) return { ...base, homings, lost, motion: may.motion, missing };
    const read =
      gauge.answer === 'yes' ? yield* askLength('repeat', 'trip on a dial gauge', axis, latest) : undefined;
    homings.push({
      ...seenIn(watched, roles, may.motion),
      start: wayGone(went.window, axis.letter),
      gauge: read,
    });
  }
  return { ...base, homings, lost, motion: may.motion };
}

/** It homed from end to end; that its trips lie apart is what is looked into here. */
const cameHome = (homing: Verdict | undefined): boolean =>
  homing !== undefined &&
  (homing.status === 'proved' || homing.status === 'limited' || homing.status === 'failed') &&
  homing.findings.every(({ kind }) => kind === 'scattered-trips' || weightOf[kind] !== 'fault');

/**
 * Away from its switch, where the next homing begins. Asked once: a move that may have been made is not asked for again, or the axis
 * goes twice as far as its way was confirmed free.
 */
function goTo(axis: Axis, roles: SeekRoles, distance: number, latest: Latest): Asking<Ended> {
  return put(
    {
      check: 'repeat',
      action: 'move',
      axis: axis.letter,
      direction: roles.toward === 1 ? 'negative' : 'positive',
      distance,
      unit: unitOf(axis),
      seconds: timeToMove,
    },
    latest,
  );
}

function seenIn(
  { ended: { window }, rest }: WatchedHoming,
  roles: SeekRoles,
  motion: MotionKnown,
): Omit<RepeatedHoming, 'start' | 'gauge'> {
  const abilities = gridOf({ axis: roles.axis.letter, roles }, motion, window);
  const { cycle, place } = seekRun({ window, roles, abilities, rest });
  const period = resolutionOf(window)?.median;
  return { cycle, place, ...(period !== undefined && { period }) };
}
