import type { MeasureAsk } from '../../model/ask.ts';
import type { Axis, AxisLetter } from '../../model/machine.ts';
import { allSwitches } from '../../model/machine.ts';
import type { Check, Ended, Procedure, Scene } from '../../model/procedure.ts';
import { type Mm, mm } from '../../model/units.ts';
import { systemOf, usedSystems } from '../envelope/offset-issues.ts';
import { untold, type WorkSystem } from '../envelope/offsets.ts';
import { readProgram } from '../envelope/program/read.ts';
import { type EnvelopeEvidence, judgeEnvelope } from '../judging/envelope.ts';
import { timeToAnswer } from '../limits.ts';
import type { Asking, Latest } from '../procedures/asking.ts';
import { axesAsked, unitOf } from '../procedures/axes-asked.ts';
import { untilUnbroken } from '../procedures/motors-off.ts';

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
    if (!hasAnything(axis, scene)) continue;
    const soft = axis.soft ?? (yield* softLimits(axis, latest));
    const origins: Partial<Record<WorkSystem, Mm>> = {};
    for (const system of systems) {
      if (!program?.boxes.some((box) => systemOf(box, untold) === system && box.axes[axis.letter])) continue;
      const zero = yield* length('work zero in machine coordinates', axis, latest, system);
      if (zero.answer === 'value' && zero.value !== undefined) origins[system] = mm(zero.value);
    }
    yield { keep: { axis: axis.letter, soft, origins } };
  }
}

/** An axis without limits, switches or travel in the file, as a spindle or a rotary table, has no envelope. */
const hasAnything = (axis: Axis, { machine }: Scene): boolean =>
  axis.travel !== undefined ||
  axis.soft !== undefined ||
  axis.hard !== undefined ||
  allSwitches(machine).some((each) => each.axis === axis.letter);

function* softLimits(axis: Axis, latest: Latest): Asking<readonly [Mm, Mm] | undefined> {
  const low = yield* length('lower soft limit', axis, latest);
  if (low.answer !== 'value' || low.value === undefined) return undefined;
  const high = yield* length('upper soft limit', axis, latest);
  if (high.answer !== 'value' || high.value === undefined) return undefined;
  return low.value <= high.value ? [mm(low.value), mm(high.value)] : [mm(high.value), mm(low.value)];
}

function length(where: MeasureAsk['where'], axis: Axis, latest: Latest, system?: string): Asking<Ended> {
  return untilUnbroken(
    {
      check: 'envelope',
      action: 'measure',
      quantity: 'distance',
      unit: unitOf(axis),
      where,
      axis: axis.letter satisfies AxisLetter,
      ...(system !== undefined && { system }),
      seconds: timeToAnswer,
    },
    latest,
  );
}
