import type { Check, Known, MotionKnown, Procedure, Scene } from '../../model/procedure.ts';
import type { Missing, Verdict } from '../../model/verdict.ts';
import { homelessAxes } from '../judging/homeless-axes.ts';
import { type HomingItem, nothingOf } from '../judging/homing-evidence.ts';
import { judgeHomingItem } from '../judging/homing-verdict.ts';
import { withoutEvidence } from '../judging/status.ts';
import { homingsWatched } from '../limits.ts';
import type { Asking, Latest } from '../procedures/asking.ts';
import { beforeMotion } from '../procedures/before-motion.ts';
import { homeOnce } from '../procedures/home-axes.ts';
import type { Homing } from '../procedures/watched-homing.ts';
import { axesToSeek } from '../scope/axes-to-seek.ts';
import { lastOf } from '../scope/last-verdict.ts';
import { seekRoles } from '../seek/roles.ts';
import type { SeekRun } from '../seek/run.ts';

type HomingKept = HomingItem | { readonly motion: MotionKnown };

/**
 * Approach, trip, stop, back off, clear, slow approach, trip, release, zero set: does each part happen, how fast and how far, and in which order do the axes go? The first
 * homing sets the zero; what the second shifts it by is what was lost in between.
 */
export const homing: Check<HomingKept> = { name: 'homing', gather, judge, teaches };

function* gather(scene: Scene): Procedure<HomingKept> {
  const latest: Latest = { status: scene.now, period: scene.known.motion.period };
  let { motion } = scene.known;
  const axes = axesToSeek(scene);
  const ready: Homing[number][] = [];
  for (const { letter } of axes) {
    const roles = seekRoles(scene.machine, letter, scene.known.answering);
    if (!roles) continue;
    const held = heldBack(letter, scene);
    const may = held
      ? { missing: held, motion }
      : yield* beforeMotion('homing', [letter], scene, latest, motion);
    motion = may.motion;
    if (may.missing) yield { keep: nothingOf(letter, roles, may.missing) };
    else ready.push({ axis: letter, roles });
  }
  // All together only where none is held back.
  const together = ready.length === axes.length && ready.length > 1;
  for (const group of together ? [ready] : ready.map((each) => [each])) {
    const done = yield* homeGroup(group, together, scene, latest, motion);
    motion = done.motion;
    for (const item of done.items) yield { keep: item };
  }
  yield { keep: { motion: { ...motion, period: latest.period } } };
}

function* homeGroup(
  group: Homing,
  together: boolean,
  scene: Scene,
  latest: Latest,
  motion: MotionKnown,
): Asking<{ readonly items: readonly HomingItem[]; readonly motion: MotionKnown }> {
  let items: readonly HomingItem[] = [];
  let now = motion;
  let missing: Missing | undefined;
  for (let round = 0; round < homingsWatched; round++) {
    const done = yield* homeOnce(group, together, items, scene, latest, now);
    items = done.items;
    now = done.motion;
    missing = done.missing;
    if (missing || items.some(({ alarms, runs }) => alarms.length > 0 || !mayGoAgain(runs.at(-1)))) break;
  }
  const all = group.map(
    ({ axis, roles }) => items.find((each) => each.axis === axis) ?? nothingOf(axis, roles, missing),
  );
  return { items: all, motion: now };
}

/** Off its switch, and every part up to there was made: only then is another homing worth its risk. */
const mayGoAgain = (run: SeekRun | undefined): boolean =>
  run?.cycle.clear !== undefined && run.cycle.endCondition === 'free' && run.cycle.ends === 'still';

/** An axis that failed its first seek is not sent home. */
function heldBack(axis: string, scene: Scene): Missing | undefined {
  const seek = lastOf('seek', axis, scene);
  if (!scene.checks.includes('seek')) return undefined;
  return seek?.status === 'proved' || seek?.status === 'limited' ? undefined : 'seek-not-proved';
}

function judge(kept: readonly HomingKept[], scene: Scene): readonly Verdict[] {
  const items = kept.filter((each) => 'axis' in each);
  const verdicts = axesToSeek(scene).map(({ letter }) => {
    const item = items.findLast(({ axis }) => axis === letter);
    return item ? judgeHomingItem(item) : withoutEvidence({ check: 'homing', subject: letter }, 'stopped');
  });
  return [...verdicts, ...homelessAxes('homing', scene)];
}

function teaches(kept: readonly HomingKept[], scene: Scene): Partial<Known> {
  const motion = kept.flatMap((each) => ('motion' in each ? [each.motion] : [])).at(-1) ?? scene.known.motion;
  return { motion, ...(motion.motorsOn && { motorsOff: false }) };
}
