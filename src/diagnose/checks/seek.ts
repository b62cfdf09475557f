import type { Check, Known, MotionKnown, Procedure, Scene } from '../../model/procedure.ts';
import type { Verdict } from '../../model/verdict.ts';
import { judgeFrame } from '../judging/frame-verdict.ts';
import { homelessAxes } from '../judging/homeless-axes.ts';
import type { SeekItem } from '../judging/seek-evidence.ts';
import { judgeSeekItem, seekJudgement } from '../judging/seek-verdict.ts';
import { withoutEvidence } from '../judging/status.ts';
import { turnedNotMirrored } from '../judging/turned.ts';
import type { Latest } from '../procedures/asking.ts';
import { seekAxis } from '../procedures/seek-axis.ts';
import { axesToSeek } from '../scope/axes-to-seek.ts';
import { seekRoles } from '../seek/roles.ts';

type SeekKept = SeekItem | { readonly motion: MotionKnown };

/**
 * Does each axis run to the switch it should, in the right direction? The machine moves for the first time, by the person's own control. What is commanded and where the
 * tool really goes are two questions: two wrong settings cancel at the switch and mirror every part.
 */
export const seek: Check<SeekKept> = { name: 'seek', gather, judge, teaches };

function* gather(scene: Scene): Procedure<SeekKept> {
  const latest: Latest = { status: scene.now, period: scene.known.motion.period };
  let { motion } = scene.known;
  for (const { letter } of axesToSeek(scene)) {
    const roles = seekRoles(scene.machine, letter, scene.known.answering);
    if (!roles) continue;
    const done = yield* seekAxis(letter, roles, scene, latest, motion);
    motion = { ...done.motion, period: latest.period };
    yield { keep: { motion } };
    yield { keep: done.item };
  }
}

function judge(kept: readonly SeekKept[], scene: Scene): readonly Verdict[] {
  const items = kept.filter((each) => 'axis' in each);
  const verdicts = axesToSeek(scene).map(({ letter }) => {
    const item = items.find(({ axis }) => axis === letter);
    return item
      ? judgeSeekItem(item, scene.machine)
      : withoutEvidence({ check: 'seek', subject: letter }, 'stopped');
  });
  const homeless = homelessAxes('seek', scene);
  // Nothing moved: there is nothing to say of the frame, and what was missing is said of each axis.
  if (items.every(({ runs }) => runs.length === 0)) return [...verdicts, ...homeless];
  const frame = judgeFrame(
    items.map((item) => ({
      axis: item.axis,
      judged: item.runs.length > 0 ? seekJudgement(item, scene.machine) : undefined,
      first: item.first,
    })),
    scene.machine,
    motionOf(kept, scene),
  );
  return [...turnedNotMirrored(frame ? [...verdicts, frame] : verdicts, frame), ...homeless];
}

const motionOf = (kept: readonly SeekKept[], scene: Scene): MotionKnown =>
  kept.flatMap((each) => ('motion' in each ? [each.motion] : [])).at(-1) ?? scene.known.motion;

function teaches(kept: readonly SeekKept[], scene: Scene): Partial<Known> {
  const motion = motionOf(kept, scene);
  return { motion, ...(motion.motorsOn && { motorsOff: false }) };
}
