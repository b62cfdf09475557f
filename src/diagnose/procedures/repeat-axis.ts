import type { Axis } from '../../model/machine.ts';
import type { Ended, MotionKnown, Scene } from '../../model/procedure.ts';
import { mm } from '../../model/units.ts';
import { cutHoming } from '../homing/cut.ts';
import type { RepeatedHoming, RepeatItem } from '../judging/repeat.ts';
import { cyclesUsual, startPoints, timeToAnswer, timeToMove } from '../limits.ts';
import { motionOf } from '../motion/motion.ts';
import { abilitiesOf, statesAtRest } from '../seek/abilities.ts';
import { expectationOf } from '../seek/expect.ts';
import { SeekGuard } from '../seek/guard.ts';
import { type SeekRoles, seekRoles } from '../seek/roles.ts';
import { resolutionOf } from '../signal/resolution.ts';
import { type Asking, type Latest, put, refusal } from './asking.ts';
import { unitOf } from './axes-asked.ts';
import { beforeMotion, lateOf } from './before-motion.ts';
import { lastOf } from './last-verdict.ts';
import { untilUnbroken } from './motors-off.ts';

/** Homes one axis again and again, from three start points in turn; undefined for an axis that has no home switch. */
export function* repeatAxis(
  axis: Axis,
  scene: Scene,
  latest: Latest,
  motion: MotionKnown,
): Asking<RepeatItem | undefined> {
  const roles = seekRoles(scene.machine, axis.letter, scene.known.answering);
  if (!roles || roles.home.length === 0) return undefined;
  const base = { axis: axis.letter, homings: [], motion } as const;
  const homed = lastOf('homing', axis.letter, scene)?.status;
  if (homed !== 'proved' && homed !== 'limited') return { ...base, missing: 'homing-not-shown' };
  const may = yield* beforeMotion('repeat', [axis.letter], scene, latest, motion);
  if (may.missing) return { ...base, motion: may.motion, missing: may.missing };
  const gauge = yield* untilUnbroken(
    { check: 'repeat', action: 'confirm', topic: 'has-gauge', axis: axis.letter, seconds: timeToAnswer },
    latest,
  );
  const why = refusal(gauge);
  if (why === 'skipped' || why === 'cannot') return { ...base, motion: may.motion, missing: why };
  const homings: RepeatedHoming[] = [];
  const wanted = scene.cycles ?? cyclesUsual;
  let missing: RepeatItem['missing'];
  for (let run = 0; run < wanted && !missing; run++) {
    const start = startPoints[run % startPoints.length] ?? 0;
    yield* goTo(axis, roles, start, latest);
    const made = yield* homeOnce(axis, roles, latest);
    if (made.alarmed)
      return { ...base, homings, motion: { ...may.motion, motorsOn: false }, missing: 'contradictory' };
    missing = refusal(made.ended) ?? (made.ended.by === 'gap' ? 'stream-broke-off' : undefined);
    if (missing || !made.homing) break;
    const read = gauge.answer === 'yes' ? yield* readGauge(axis, latest) : undefined;
    homings.push({
      ...made.homing,
      start: mm(start),
      ...(read?.answer === 'value' && read.value !== undefined && { gauge: mm(read.value) }),
    });
  }
  return { ...base, homings, motion: may.motion, ...(missing && { missing }) };
}

function goTo(axis: Axis, roles: SeekRoles, distance: number, latest: Latest): Asking<Ended> {
  return untilUnbroken(
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

function* homeOnce(
  axis: Axis,
  roles: SeekRoles,
  latest: Latest,
): Asking<{
  readonly ended: Ended;
  readonly alarmed: boolean;
  readonly homing?: Omit<RepeatedHoming, 'start'>;
}> {
  const rest = statesAtRest(latest.status);
  const guard = new SeekGuard([
    { axis: axis.letter, expectation: expectationOf(roles, { rest, ...abilitiesOf(axis, []) }) },
  ]);
  const late = lateOf(latest, [axis]);
  const ended = yield* put(
    { check: 'repeat', action: 'home', axis: axis.letter, seconds: timeToMove, ...(late && { late }) },
    latest,
    guard,
  );
  const { window } = ended;
  const [input] = roles.home;
  if (input === undefined) return { ended, alarmed: false };
  const motion = motionOf(window, axis.letter, abilitiesOf(axis, [window]));
  const cycle = cutHoming({ window, motion, input, rest: rest[input], homeValue: axis.homeValue });
  const period = resolutionOf(window)?.median;
  return {
    ended,
    alarmed: guard.alarmsOf(axis.letter).length > 0,
    homing: { cycle, ...(period !== undefined && { period }) },
  };
}

function readGauge(axis: Axis, latest: Latest): Asking<Ended> {
  return untilUnbroken(
    {
      check: 'repeat',
      action: 'measure',
      quantity: 'distance',
      unit: unitOf(axis),
      where: 'trip on a dial gauge',
      axis: axis.letter,
      seconds: timeToAnswer,
    },
    latest,
  );
}
