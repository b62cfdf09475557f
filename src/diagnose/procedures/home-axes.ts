import type { MotionKnown, Scene } from '../../model/procedure.ts';
import type { Missing } from '../../model/verdict.ts';
import { type HomingIssueKind, judgeHoming } from '../homing/judge.ts';
import { type AxisHoming, orderIssues, orderSeen } from '../homing/order.ts';
import { ownPart } from '../homing/own-part.ts';
import { lostIn } from '../homing/reference.ts';
import { type HomingItem, nothingOf } from '../judging/homing-evidence.ts';
import { motionOf } from '../motion/motion.ts';
import { judgeSeek } from '../seek/judge.ts';
import type { SeekAnswers } from '../seek/observe.ts';
import { type SeekRun, seekRun } from '../seek/run.ts';
import { toolIn } from '../seek/sense.ts';
import { type Asking, type Latest, refusal } from './asking.ts';
import { toolSeen } from './first-move.ts';
import { lookApart } from './look-apart.ts';
import { homesOf } from './seek-axis.ts';
import { gridOf, type Homing, type WatchedHoming, watchHoming } from './watched-homing.ts';

export interface Homed {
  readonly items: readonly HomingItem[];
  readonly motion: MotionKnown;
  readonly missing: Missing | undefined;
}

/** One homing under watch, of one axis or of all together, added to what earlier ones showed. */
export function* homeOnce(
  homing: Homing,
  together: boolean,
  earlier: readonly HomingItem[],
  scene: Scene,
  latest: Latest,
  motion: MotionKnown,
): Asking<Homed> {
  const [only] = homing;
  const axis = together ? 'all' : only?.axis;
  if (axis === undefined) return { items: [], motion, missing: undefined };
  const watched = yield* watchHoming('homing', axis, homing, latest, motion);
  const { ended, guard } = watched;
  const made = withoutCutOff(runsIn(homing, watched, motion));
  const why = refusal(ended);
  if (!made.some(({ run }) => run) && why) return { items: earlier, motion, missing: why };
  const seen = made.flatMap(({ roles, run }): readonly AxisHoming[] =>
    run ? [{ axis: roles.axis, motion: run.motion, cycle: run.cycle }] : [],
  );
  const order = together ? orderSeen(seen).map((each) => each.axis) : undefined;
  const issues = together ? orderIssues(seen) : [];
  const items: HomingItem[] = [];
  for (const { axis: letter, roles, run } of made) {
    const before = earlier.find((each) => each.axis === letter) ?? nothingOf(letter, roles);
    const item: HomingItem = {
      ...before,
      runs: run ? [...before.runs, run] : before.runs,
      alarms: [...before.alarms, ...guard.alarmsOf(letter)],
      mapProved: homesOf(letter, scene).every(
        ({ subject, input }) => scene.known.answering[subject] === input,
      ),
      lostSince: before.lostSince || (before.runs.length > 0 && lostIn(watched.brokenOff, roles.stops)),
      ...(order && { order }),
      orderIssues: issues.filter((each) => each.axis === letter),
      ...(!run && { missing: made.some((each) => each.run) ? 'ended-by-another' : 'no-motion-seen' }),
    };
    items.push(run ? yield* lookedAt(item, scene, latest, motion) : item);
  }
  const alarmed = items.some(({ alarms }) => alarms.length > 0);
  return { items, motion: alarmed ? { ...motion, motorsOn: false } : motion, missing: undefined };
}

/** Where a homing ended in a fault of one axis, another that was in order until then was stopped with it: nothing follows of that one. */
function withoutCutOff<Made extends { readonly run: SeekRun | undefined }>(
  made: readonly Made[],
): readonly Made[] {
  const faulted = made.filter(({ run }) => run?.cycle.ends === 'fault');
  const isToBlame = ({ run }: Made) =>
    run !== undefined && judgeHoming(run.cycle).issues.some(({ kind }) => endsAHoming.has(kind));
  if (!faulted.some(isToBlame)) return made;
  return made.map((each) =>
    faulted.includes(each) && !isToBlame(each) ? { ...each, run: undefined } : each,
  );
}

/** What a controller gives up a homing for. */
const endsAHoming: ReadonlySet<HomingIssueKind> = new Set([
  'pressed-at-start',
  'no-reversal',
  'does-not-clear',
  'slow-trip-missed',
]);

/** What each axis did of it; undefined where it did nothing. */
function runsIn(
  homing: Homing,
  { ended: { window }, rest }: WatchedHoming,
  motion: MotionKnown,
): readonly (Homing[number] & { readonly run: SeekRun | undefined })[] {
  const seen = homing.map((each) => ({ each, abilities: gridOf(each, motion, window) }));
  // Alone it has the whole window; what the others did is only worked out where there are any.
  const motions =
    seen.length > 1 ? seen.map(({ each, abilities }) => motionOf(window, each.axis, abilities)) : [];
  return seen.map(({ each, abilities }, i) => {
    const own = motions[i];
    const part = own
      ? ownPart(
          window,
          own,
          motions.filter((other) => other !== own),
        )
      : window;
    return { ...each, run: part && seekRun({ window: part, roles: each.roles, abilities, rest }) };
  });
}

function* lookedAt(item: HomingItem, scene: Scene, latest: Latest, motion: MotionKnown): Asking<HomingItem> {
  const { axis, roles, runs, mapProved } = item;
  const judge = (said: SeekAnswers) => judgeSeek({ roles, runs, mapProved, answers: said });
  const earlier = item.answers;
  const { features } = judge(earlier);
  // What was seen of the first move holds as long as the axis comes to its switch; one that does not may have changed since.
  const cameToIt =
    features.trip === undefined || features.trip === 'own' || features.trip === 'between-reports';
  const tool =
    !cameToIt && features.way !== 'none'
      ? yield* toolSeen('homing', axis, latest)
      : toolIn(motion.tried[axis], runs.at(-1)?.cycle.approach?.direction);
  // Trips that lie apart: that it stood at its switch at one of them says nothing of the other.
  const { reached, ...others } = earlier;
  const isApart = features.trips === 'scattered' || features.trips === 'drifting';
  const answers = yield* lookApart(
    { check: 'homing', axis, home: homesOf(axis, scene)[0]?.subject, latest, judge },
    { ...others, ...(reached && !isApart && { reached }), ...(tool && { tool }) },
  );
  return { ...item, answers };
}
