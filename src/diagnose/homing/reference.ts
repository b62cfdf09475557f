import type { Axis, InputName } from '../../model/machine.ts';
import type { Window } from '../../model/procedure.ts';
import type { Reading } from '../../model/reading.ts';
import type { Millis, Mm } from '../../model/units.ts';
import { type Motion, motionOf } from '../motion/motion.ts';
import { abilitiesOf } from '../seek/abilities.ts';
import { stateIn } from '../signal/track.ts';

/** What makes a machine zero one not to trust, though the numbers go on. */
export type ReferenceLoss = 'controller-restarted' | 'stream-broke-off' | 'fault' | 'stopped-while-moving';

export interface Lost {
  readonly why: ReferenceLoss;
  /** Host clock. */
  readonly arrived: Millis;
}

/**
 * The first thing after a homing that makes its zero doubtful: a restart, a hole in the stream in which anything can have happened, a fault, or a stop in the middle
 * of a move (a motor held to no count any more runs on). Readings from the end of the homing on; `stopped` is asked of each report whether a stop or limit input is operated.
 */
export function referenceLost(
  readings: readonly Reading[],
  stopped: (report: Reading & { kind: 'status' }) => boolean,
): Lost | undefined {
  let wasMoving = false;
  let first = true;
  for (const reading of readings) {
    const { arrived } = reading;
    if (reading.kind === 'gap')
      return { why: reading.why === 'controller-restarted' ? reading.why : 'stream-broke-off', arrived };
    if (reading.kind !== 'status') continue;
    if (reading.activity === 'fault' && !first) return { why: 'fault', arrived };
    if (wasMoving && stopped(reading)) return { why: 'stopped-while-moving', arrived };
    wasMoving = reading.activity === 'moving';
    first = false;
  }
  return undefined;
}

/**
 * Where the machine's numbers were set anew though nothing homed: only homing may change machine zero. Controllers that show no activity, or call the moment of
 * setting still, are given the report on either side. mm, the new number less the old one.
 */
function zeroSetWithoutHoming({
  samples,
  jumps,
}: Motion): readonly { readonly arrived: Millis; readonly by: Mm }[] {
  return jumps.flatMap(({ before, by }) => {
    const [old, next] = [samples[before], samples[before + 1]];
    if (!old || !next || old.segment !== next.segment) return [];
    const around = samples.slice(Math.max(0, before - 2), before + 3).map(({ activity }) => activity);
    const mayBeHoming = around.some((activity) => activity === 'homing' || activity === '?');
    return mayBeHoming ? [] : [{ arrived: next.arrived, by }];
  });
}

/** The same of one move of an axis, which is no homing. */
export const zeroSetIn = (window: Window, axis: Axis): boolean =>
  zeroSetWithoutHoming(motionOf(window, axis.letter, abilitiesOf(axis, [window]))).length > 0;

/**
 * Whether the zero of a homing was lost in what came after it. A cable that was out is no loss by itself: the count may have gone on, and the next homing shows what it came
 * to.
 */
export const lostIn = (windows: readonly Window[], stops: readonly InputName[]): boolean =>
  windows.some((window) => {
    const why = referenceLost(window.readings, (report) =>
      stops.some((input) => stateIn(report, input)?.active === '1'),
    )?.why;
    return why !== undefined && why !== 'stream-broke-off';
  });
