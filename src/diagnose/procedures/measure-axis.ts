import type { Axis } from '../../model/machine.ts';
import type { Ended, MotionKnown, Scene } from '../../model/procedure.ts';
import { mm } from '../../model/units.ts';
import { lostIn, zeroSetIn } from '../homing/reference.ts';
import type { ScaleItem } from '../judging/scale.ts';
import { scaleLengths, takenUpFirst, timeToAnswer, timeToMove } from '../limits.ts';
import { wayGone } from '../motion/way-gone.ts';
import type { ScaleRun } from '../scale/fit.ts';
import { seekRoles } from '../seek/roles.ts';
import { askLength } from './ask-length.ts';
import { type Asking, type Latest, put, refusal } from './asking.ts';
import { beforeMotion } from './before-motion.ts';
import { untilUnbroken } from './motors-off.ts';

/** A move to be measured: signed, as a share of the short or the long length; the first only takes up what is loose. */
interface Leg {
  readonly by: number;
  readonly measured: boolean;
}

/** Inwards from home by a short and a long length, and back by the same. */
export function* measureAxis(
  axis: Axis,
  scene: Scene,
  latest: Latest,
  motion: MotionKnown,
): Asking<ScaleItem> {
  const base = { axis: axis.letter, runs: [], lost: false } as const;
  const may = yield* beforeMotion('scale', [axis.letter], scene, latest, motion);
  if (may.missing) return { ...base, motion: may.motion, missing: may.missing };
  const { short } = scaleLengths;
  const long = Math.floor(Math.min(scaleLengths.long, (axis.travel ?? 0) * scaleLengths.share - short));
  if (long <= short) return { ...base, motion: may.motion, missing: 'way-not-free' };
  const inwards = axis.homes === 'positive' ? -1 : 1;
  const whole = `${short + long + takenUpFirst} mm`;
  const free = yield* untilUnbroken(
    {
      check: 'scale',
      action: 'confirm',
      topic: 'long-way-free',
      axis: axis.letter,
      shows: [whole],
      seconds: timeToAnswer,
    },
    latest,
  );
  if (free.answer !== 'yes') return { ...base, motion: may.motion, missing: refusal(free) ?? 'way-not-free' };
  const legs: readonly Leg[] = [
    { by: takenUpFirst, measured: false },
    { by: short, measured: true },
    { by: long, measured: true },
    { by: -long, measured: true },
    { by: -short, measured: true },
  ];
  const runs: ScaleRun[] = [];
  const stops = seekRoles(scene.machine, axis.letter, scene.known.answering)?.stops ?? [];
  let lost = false;
  let before = 0;
  for (const { by, measured } of legs) {
    const moved = yield* move(axis, by * inwards, latest);
    const why = refusal(moved) ?? (moved.by === 'gap' ? 'stream-broke-off' : undefined);
    lost ||= zeroSetIn(moved.window, axis) || lostIn([moved.window], stops);
    if (why) return { ...base, runs, lost, motion: may.motion, missing: why };
    if (measured) {
      const read = yield* askLength('scale', 'way of the tool over the work', axis, latest);
      if (read !== undefined)
        runs.push({
          // What the controller says it did need not be what was asked.
          commanded: wayGone(moved.window, axis.letter) ?? mm(Math.abs(by)),
          measured: mm(Math.abs(read)),
          way: by * inwards > 0 ? 1 : -1,
          afterReversal: before !== 0 && Math.sign(by) !== Math.sign(before),
        });
    }
    before = by;
  }
  return { ...base, runs, lost, motion: may.motion };
}

/** Asked once: a move that may have been made is not asked for again, or the axis goes twice as far as its way was confirmed free. */
function move(axis: Axis, by: number, latest: Latest): Asking<Ended> {
  return put(
    {
      check: 'scale',
      action: 'move',
      axis: axis.letter,
      direction: by > 0 ? 'positive' : 'negative',
      distance: Math.abs(by),
      unit: 'mm',
      seconds: timeToMove,
    },
    latest,
  );
}
