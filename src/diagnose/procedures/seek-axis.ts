import { type AxisLetter, allSwitches } from '../../model/machine.ts';
import type { Ended, MotionKnown, Scene } from '../../model/procedure.ts';
import type { SeekItem } from '../judging/seek-evidence.ts';
import { offTheSwitch, rowAttempts, timeToMove } from '../limits.ts';
import { abilitiesOf, statesAtRest } from '../seek/abilities.ts';
import { expectationOf } from '../seek/expect.ts';
import { SeekGuard } from '../seek/guard.ts';
import { judgeFirstSeek } from '../seek/judge-first-seek.ts';
import { tripsForPlace } from '../seek/limits.ts';
import type { SeekAnswers } from '../seek/observe.ts';
import type { SeekRoles } from '../seek/roles.ts';
import { type SeekRun, seekRun } from '../seek/run.ts';
import { reallyExpected, senseOf, toolIn, turnsOneWay } from '../seek/sense.ts';
import { type Asking, type Latest, put, refusal } from './asking.ts';
import { beforeMotion, lateOf } from './before-motion.ts';
import { lookApart } from './look-apart.ts';
import { untilUnbroken } from './motors-off.ts';

/**
 * The first seek of one axis: what must be settled before, the seek under watch, and what the person saw of it. Where nobody was sure which way the tool went, two more
 * seeks follow: a proved switch that trips three times in one place says where the tool was.
 */
export function* seekAxis(
  axis: AxisLetter,
  roles: SeekRoles,
  scene: Scene,
  latest: Latest,
  motion: MotionKnown,
): Asking<{ readonly item: SeekItem; readonly motion: MotionKnown }> {
  const mapProved = homesOf(axis, scene).every(
    ({ subject, input }) => scene.known.answering[subject] === input,
  );
  const base = { axis, roles, runs: [], answers: {}, alarms: [], mapProved };
  if (latest.status && latest.status.positions[latest.status.axes.indexOf(axis)] === undefined)
    return { item: { ...base, missing: 'position-not-reported' }, motion };
  const may = yield* beforeMotion('seek', [axis], scene, latest, motion);
  if (may.missing) return { item: { ...base, missing: may.missing }, motion: may.motion };
  const first = may.motion.tried[axis];
  const rest = statesAtRest(latest.status);
  const runs: SeekRun[] = [];
  const alarms: SeekItem['alarms'][number][] = [];
  const watched = { axis, roles, scene, latest, first, rest };
  const wanted = senseOf(first) === undefined && roles.placed ? tripsForPlace : 1;
  let item: SeekItem = { ...base, first };
  let missing: SeekItem['missing'];
  while (first?.tool !== 'none' && !turnsOneWay(first) && runs.length < wanted && alarms.length === 0) {
    const made = yield* seekOnce(watched);
    if (!made.run) {
      missing = runs.length > 0 ? undefined : made.missing;
      break;
    }
    runs.push(made.run);
    alarms.push(...made.alarms);
    if (!made.run.cycle.trip) break;
    if (runs.length < wanted) yield* offIt(axis, made.run, roles, latest);
  }
  if (missing) return { item: { ...item, missing }, motion: may.motion };
  if (runs.length === 0 && first) runs.push(runFrom({ ...watched }, first.window));
  item = { ...item, runs, alarms };
  if (turnsOneWay(first) || first?.other) return { item, motion: may.motion };
  const tool = toolIn(first, runs.at(-1)?.cycle.approach?.direction);
  const told: SeekAnswers = tool === undefined ? {} : { tool };
  const answers = yield* lookApart(
    {
      check: 'seek',
      axis,
      home: homesOf(axis, scene)[0]?.subject,
      latest,
      judge: (said) => judgeFirstSeek({ roles, runs, mapProved, answers: said }, alarms),
    },
    told,
  );
  const last = runs.at(-1);
  if (last?.cycle.trip && alarms.length === 0) yield* offIt(axis, last, roles, latest);
  const after = alarms.length > 0 ? { ...may.motion, motorsOn: false } : may.motion;
  return { item: { ...item, answers }, motion: after };
}

export const homesOf = (axis: AxisLetter, { machine }: Scene) =>
  allSwitches(machine).filter((each) => each.axis === axis && each.duty.includes('home'));

interface Watched {
  readonly axis: AxisLetter;
  readonly roles: SeekRoles;
  readonly scene: Scene;
  readonly latest: Latest;
  readonly first: SeekItem['first'];
  readonly rest: ReturnType<typeof statesAtRest>;
}

function* seekOnce({ axis, roles, latest, first, rest }: Watched): Asking<{
  readonly run?: SeekRun;
  readonly alarms: SeekItem['alarms'];
  readonly missing?: NonNullable<SeekItem['missing']>;
}> {
  const seen = first ? [first.window] : [];
  const abilities = abilitiesOf(roles.axis, seen);
  const expectation = reallyExpected(expectationOf(roles, { rest, ...abilities }), senseOf(first));
  let ended: Ended | undefined;
  for (let attempt = 0; attempt < rowAttempts; attempt++) {
    const guard = new SeekGuard([{ axis, expectation }]);
    const late = lateOf(latest, [roles.axis]);
    ended = yield* put(
      { check: 'seek', action: 'seek', axis, seconds: timeToMove, ...(late && { late }) },
      latest,
      guard,
    );
    const alarms = guard.alarmsOf(axis);
    if (ended.by === 'gap' && alarms.length === 0) continue;
    const run = seekRun({
      window: ended.window,
      roles,
      abilities: abilitiesOf(roles.axis, [...seen, ended.window]),
      rest,
    });
    const why = refusal(ended);
    return why && !run.cycle.approach ? { alarms, missing: why } : { run, alarms };
  }
  return { alarms: [], missing: 'stream-broke-off' };
}

/** Off the switch again, so that the next motion begins from a free one. */
function* offIt(axis: AxisLetter, { cycle }: SeekRun, roles: SeekRoles, latest: Latest): Asking<void> {
  if (cycle.endCondition !== 'operated') return;
  const way = cycle.approach?.direction ?? roles.toward ?? 1;
  yield* untilUnbroken(
    {
      check: 'seek',
      action: 'move',
      axis,
      direction: way === 1 ? 'negative' : 'positive',
      distance: offTheSwitch,
      unit: roles.axis.kind === 'rotary' ? 'degrees' : 'mm',
      seconds: timeToMove,
    },
    latest,
  );
}

/** Where the axis was not sent on its seek, its first move is all there is to judge. */
const runFrom = ({ roles, rest }: Watched, window: Ended['window']): SeekRun =>
  seekRun({ window, roles, abilities: abilitiesOf(roles.axis, [window]), rest });
