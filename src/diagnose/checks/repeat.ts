import type { Check, Procedure, Scene } from '../../model/procedure.ts';
import { judgeRepeat, type RepeatItem } from '../judging/repeat.ts';
import type { Latest } from '../procedures/asking.ts';
import { repeatAxis } from '../procedures/repeat-axis.ts';
import { axesAsked } from '../scope/axes-asked.ts';

/**
 * Does the axis come back to the same place? It is homed again and again from three start points; where its switch trips is compared in one frame. What the stream tells is
 * commanded: only a dial gauge makes it measured (ISO 230-2 defines the number that is printed).
 */
export const repeat: Check<RepeatItem> = {
  name: 'repeat',
  gather,
  judge: judgeRepeat,
  teaches: (items) => {
    const last = items.at(-1);
    return last ? { motion: last.motion } : {};
  },
};

function* gather(scene: Scene): Procedure<RepeatItem> {
  const latest: Latest = { status: scene.now, period: scene.known.motion.period };
  let motion = scene.known.motion;
  for (const axis of axesAsked(scene)) {
    const item = yield* repeatAxis(axis, scene, latest, motion);
    if (!item) continue;
    motion = item.motion;
    yield { keep: item };
  }
}
