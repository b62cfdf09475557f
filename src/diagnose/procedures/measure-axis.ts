import type { Axis } from '../../model/machine.ts';
import type { Ended, MotionKnown, Scene } from '../../model/procedure.ts';
import { mm } from '../../model/units.ts';
import type { ScaleItem } from '../judging/scale.ts';
import { scaleLengths, timeToAnswer, timeToMove } from '../limits.ts';
import { axisTrack } from '../motion/track.ts';
import type { ScaleRun } from '../scale/fit.ts';
import { type Asking, type Latest, refusal } from './asking.ts';
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
  const base = { axis: axis.letter, runs: [] } as const;
  const may = yield* beforeMotion('scale', [axis.letter], scene, latest, motion);
  if (may.missing) return { ...base, motion: may.motion, missing: may.missing };
  const { short } = scaleLengths;
  const long = Math.floor(Math.min(scaleLengths.long, (axis.travel ?? 0) * scaleLengths.share - short));
  if (long <= short) return { ...base, motion: may.motion, missing: 'way-not-free' };
  const inwards = axis.homes === 'positive' ? -1 : 1;
  const takeUp = 2;
  const whole = `${short + long + takeUp} mm`;
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
    { by: takeUp, measured: false },
    { by: short, measured: true },
    { by: long, measured: true },
    { by: -long, measured: true },
    { by: -short, measured: true },
  ];
  const runs: ScaleRun[] = [];
  let before = 0;
  for (const { by, measured } of legs) {
    const moved = yield* move(axis, by * inwards, latest);
    const why = refusal(moved);
    if (why) return { axis: axis.letter, runs, motion: may.motion, missing: why };
    if (measured) {
      const read = yield* readLength(axis, latest);
      const commanded = commandedIn(moved, axis) ?? Math.abs(by);
      if (read.answer === 'value' && read.value !== undefined)
        runs.push({
          commanded: mm(commanded),
          measured: mm(Math.abs(read.value)),
          way: by * inwards > 0 ? 1 : -1,
          afterReversal: before !== 0 && Math.sign(by) !== Math.sign(before),
        });
    }
    before = by;
  }
  return { axis: axis.letter, runs, motion: may.motion };
}

function move(axis: Axis, by: number, latest: Latest): Asking<Ended> {
  return untilUnbroken(
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

/** What the controller says it did, which need not be what was asked; undefined where it told no position. */
function commandedIn({ window }: Ended, { letter }: Axis): number | undefined {
  const samples = axisTrack(window, letter);
  const [first, last] = [samples[0], samples.at(-1)];
  const way = first && last ? Math.abs(last.position - first.position) : 0;
  return way > 0 ? way : undefined;
}

function readLength(axis: Axis, latest: Latest): Asking<Ended> {
  return untilUnbroken(
    {
      check: 'scale',
      action: 'measure',
      quantity: 'distance',
      unit: 'mm',
      where: 'way of the tool over the work',
      axis: axis.letter,
      seconds: timeToAnswer,
    },
    latest,
  );
}
