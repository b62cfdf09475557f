import type { Axis } from '../../model/machine.ts';
import type { Check, Procedure, Scene } from '../../model/procedure.ts';
import type { Mm } from '../../model/units.ts';
import { systemOf, usedSystems } from '../envelope/offset-issues.ts';
import { untold, type WorkSystem } from '../envelope/offsets.ts';
import { readProgram } from '../envelope/program/read.ts';
import { type EnvelopeEvidence, hasLimits, judgeEnvelope } from '../judging/envelope.ts';
import { askLength } from '../procedures/ask-length.ts';
import type { Asking, Latest } from '../procedures/asking.ts';
import { axesAsked } from '../scope/axes-asked.ts';

/**
 * Do the limits fit the machine? From the outside in along each axis: hard stop, room to stop, trip, back-off, machine zero, margin, soft limit, work; one frame for all of
 * them. What the file leaves out is asked for; a program, where one was given, is put where its offsets put it (RS-274, NISTIR 6556).
 */
export const envelope: Check<EnvelopeEvidence> = {
  name: 'envelope',
  gather,
  judge: judgeEnvelope,
  teaches: () => ({}),
};

function* gather(scene: Scene): Procedure<EnvelopeEvidence> {
  const latest: Latest = { status: scene.now };
  const program = scene.program === undefined ? undefined : readProgram(scene.program);
  const systems = program ? usedSystems(untold, program) : [];
  for (const axis of axesAsked(scene)) {
    if (!hasLimits(axis, scene.machine)) continue;
    const soft = axis.soft ?? (yield* softLimits(axis, latest));
    const origins: Partial<Record<WorkSystem, Mm>> = {};
    for (const system of systems) {
      if (!program?.boxes.some((box) => systemOf(box, untold) === system && box.axes[axis.letter])) continue;
      const zero = yield* askLength('envelope', 'work zero in machine coordinates', axis, latest, system);
      if (zero !== undefined) origins[system] = zero;
    }
    // A shift moves every work system alike; where none was told it would move nothing that is known.
    const shift =
      Object.keys(origins).length > 0
        ? yield* askLength('envelope', 'temporary shift', axis, latest)
        : undefined;
    yield { keep: { axis: axis.letter, soft, origins, shift } };
  }
}

function* softLimits(axis: Axis, latest: Latest): Asking<readonly [Mm, Mm] | undefined> {
  const low = yield* askLength('envelope', 'lower soft limit', axis, latest);
  if (low === undefined) return undefined;
  const high = yield* askLength('envelope', 'upper soft limit', axis, latest);
  if (high === undefined) return undefined;
  return low <= high ? [low, high] : [high, low];
}
