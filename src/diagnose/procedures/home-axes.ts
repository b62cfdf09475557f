import type { AxisLetter } from '../../model/machine.ts';
import type { Ended, MotionKnown, Scene } from '../../model/procedure.ts';
import type { Missing } from '../../model/verdict.ts';
import { orderIssues, orderSeen } from '../homing/order.ts';
import type { HomingItem } from '../judging/homing-evidence.ts';
import { rowAttempts, timeToMove } from '../limits.ts';
import { abilitiesOf, statesAtRest } from '../seek/abilities.ts';
import { expectationOf } from '../seek/expect.ts';
import { SeekGuard } from '../seek/guard.ts';
import { judgeSeek } from '../seek/judge.ts';
import type { SeekRoles } from '../seek/roles.ts';
import { seekRun } from '../seek/run.ts';
import { reallyExpected, senseOf, toolIn } from '../seek/sense.ts';
import { type Asking, type Latest, put, refusal } from './asking.ts';
import { lateOf } from './before-motion.ts';
import { lookApart } from './look-apart.ts';
import { homesOf } from './seek-axis.ts';

export interface Homed {
  readonly items: readonly HomingItem[];
  readonly motion: MotionKnown;
  readonly missing: Missing | undefined;
}

/** Axes with what each of their inputs means. */
export type Homing = readonly { readonly axis: AxisLetter; readonly roles: SeekRoles }[];

/** One homing under watch, of one axis or of all together, added to what earlier ones showed. */
export function* homeOnce(
  homing: Homing,
  together: boolean,
  earlier: readonly HomingItem[],
  scene: Scene,
  latest: Latest,
  motion: MotionKnown,
): Asking<Homed> {
  const rest = statesAtRest(latest.status);
  const [only] = homing;
  const axis = together ? 'all' : only?.axis;
  if (axis === undefined) return { items: [], motion, missing: undefined };
  let ended: Ended | undefined;
  let guard = new SeekGuard([]);
  for (let attempt = 0; attempt < rowAttempts; attempt++) {
    guard = new SeekGuard(
      homing.map((each) => ({ axis: each.axis, expectation: expected(each, rest, motion) })),
    );
    const late = lateOf(
      latest,
      homing.map(({ roles }) => roles.axis),
    );
    const ask = {
      check: 'homing',
      action: 'home',
      axis,
      seconds: timeToMove,
      ...(late && { late }),
    } as const;
    ended = yield* put(ask, latest, guard);
    if (ended.by !== 'gap') break;
  }
  const window = ended?.window;
  if (!window || !ended) return { items: earlier, motion, missing: 'stream-broke-off' };
  const runs = homing.map(({ axis: letter, roles }) => ({
    letter,
    roles,
    run: seekRun({ window, roles, abilities: grid({ axis: letter, roles }, motion, window), rest }),
  }));
  const moved = runs.some(({ run }) => run.cycle.approach ?? run.cycle.freed ?? run.motion.jumps[0]);
  const why = refusal(ended);
  if (!moved && why) return { items: earlier, motion, missing: why };
  const homings = runs.map(({ roles, run }) => ({ axis: roles.axis, motion: run.motion, cycle: run.cycle }));
  const order = together ? orderSeen(homings).map((each) => each.axis) : undefined;
  const issues = together ? orderIssues(homings) : [];
  const items: HomingItem[] = [];
  for (const { letter, roles, run } of runs) {
    const before = earlier.find((each) => each.axis === letter);
    const item: HomingItem = {
      axis: letter,
      roles,
      runs: [...(before?.runs ?? []), run],
      answers: before?.answers ?? {},
      alarms: [...(before?.alarms ?? []), ...guard.alarmsOf(letter)],
      mapProved: homesOf(letter, scene).every(
        ({ subject, input }) => scene.known.answering[subject] === input,
      ),
      ...(order && { order }),
      orderIssues: issues.filter((each) => each.axis === letter),
    };
    items.push(yield* lookedAt(item, scene, latest, motion));
  }
  const alarmed = items.some(({ alarms }) => alarms.length > 0);
  return { items, motion: alarmed ? { ...motion, motorsOn: false } : motion, missing: undefined };
}

const grid = (
  { axis, roles }: Homing[number],
  motion: MotionKnown,
  window?: Ended['window'],
): ReturnType<typeof abilitiesOf> => {
  const first = motion.tried[axis]?.window;
  return abilitiesOf(roles.axis, [...(first ? [first] : []), ...(window ? [window] : [])]);
};

const expected = (each: Homing[number], rest: ReturnType<typeof statesAtRest>, motion: MotionKnown) =>
  reallyExpected(
    expectationOf(each.roles, { rest, ...grid(each, motion) }),
    senseOf(motion.tried[each.axis]),
  );

function* lookedAt(item: HomingItem, scene: Scene, latest: Latest, motion: MotionKnown): Asking<HomingItem> {
  const { axis, roles, runs, mapProved } = item;
  const tool = toolIn(motion.tried[axis], runs.at(-1)?.cycle.approach?.direction);
  const answers = yield* lookApart(
    {
      check: 'homing',
      axis,
      home: homesOf(axis, scene)[0]?.subject,
      latest,
      judge: (said) => judgeSeek({ roles, runs, mapProved, answers: said }),
    },
    { ...item.answers, ...(tool && { tool }) },
  );
  return { ...item, answers };
}
