import type { Axis } from '../../model/machine.ts';
import type { Check, Procedure, Scene } from '../../model/procedure.ts';
import { factsOf } from '../judging/observed-limits.ts';
import { judgeStops, type StoppingItem } from '../judging/stopping.ts';
import { askLength } from '../procedures/ask-length.ts';
import type { Asking, Latest } from '../procedures/asking.ts';
import { axesAsked } from '../scope/axes-asked.ts';
import { seekRoles } from '../seek/roles.ts';

/**
 * Does the axis come to rest before its switch, or the machine, is harmed? From the trip it goes on for the reaction time and brakes down its ramp: v·t + v²/2a. What the
 * homings of this session showed is set beside it; nothing moves for this check.
 */
export const stopping: Check<StoppingItem> = {
  name: 'stopping',
  gather,
  judge: judgeStops,
  // Whoever moved an axis by hand to measure the room behind its trip had switched motor power off.
  teaches: (items, { known: { motion } }) =>
    items.some(({ toHardStop }) => toHardStop !== undefined)
      ? { motion: { ...motion, motorsOn: false } }
      : {},
};

function* gather(scene: Scene): Procedure<StoppingItem> {
  const latest: Latest = { status: scene.now };
  for (const axis of axesAsked(scene)) {
    const roles = seekRoles(scene.machine, axis.letter, scene.known.answering);
    if (!roles || roles.home.length === 0) continue;
    const overtravel = roles.overtravel ?? (yield* length('overtravel of the switch', axis, scene, latest));
    const toHardStop =
      roles.overtravel === undefined
        ? yield* length('from the trip to the hard stop', axis, scene, latest)
        : undefined;
    yield { keep: { axis: axis.letter, overtravel, toHardStop } };
  }
}

/** Asked only where something is known that it could be set against. */
function* length(
  where: 'overtravel of the switch' | 'from the trip to the hard stop',
  axis: Axis,
  scene: Scene,
  latest: Latest,
): Asking<StoppingItem['overtravel']> {
  const isKnown = axis.approachSpeed !== undefined && axis.acceleration !== undefined;
  if (!isKnown && !factsOf('homing', axis.letter, scene)?.homing?.stopDistance) return undefined;
  const told = yield* askLength('stopping', where, axis, latest);
  return told !== undefined && told >= 0 ? told : undefined;
}
