import type { Check, Procedure, Scene } from '../../model/procedure.ts';
import { judgeLengths, type ScaleItem } from '../judging/scale.ts';
import type { Latest } from '../procedures/asking.ts';
import { measureAxis } from '../procedures/measure-axis.ts';
import { axesAsked } from '../scope/axes-asked.ts';

/**
 * Does a commanded millimetre come out as one? Two lengths, each way, measured by the person: an error of scale grows with the length, backlash does not, and what is only
 * the holding of the calliper is the same in all.
 */
export const scale: Check<ScaleItem> = {
  name: 'scale',
  gather,
  judge: judgeLengths,
  teaches: (items) => {
    const last = items.at(-1);
    return last ? { motion: last.motion } : {};
  },
};

function* gather(scene: Scene): Procedure<ScaleItem> {
  const latest: Latest = { status: scene.now, period: scene.known.motion.period };
  let motion = scene.known.motion;
  for (const axis of axesAsked(scene)) {
    if (axis.kind === 'rotary') continue;
    const item = yield* measureAxis(axis, scene, latest, motion);
    motion = item.motion;
    yield { keep: item };
  }
}
