import { verticalAxes } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import type { CheckName, Missing } from '../../model/verdict.ts';
import { timeToAnswer, timeToPlug } from '../limits.ts';
import { type Asking, type Latest, put } from './asking.ts';

/**
 * Before the first touch of a session: motor power off, and what can fall propped, both said by the person. Returns what is
 * missing, or undefined where hands may go to the switches.
 */
export function* motorsOff(check: CheckName, scene: Scene, latest: Latest): Asking<Missing | undefined> {
  if (scene.known.motorsOff) return undefined;
  if (scene.known.handsOff) return scene.known.handsOff;
  const power = yield* untilUnbroken(
    { check, action: 'power', what: 'motors', to: 'off', seconds: timeToPlug },
    latest,
  );
  if (power.answer !== 'done') return 'motors-not-off';
  const axes = verticalAxes(scene.machine);
  if (axes.length === 0) return undefined;
  const propped = yield* untilUnbroken(
    { check, action: 'confirm', topic: 'propped', axes, seconds: timeToAnswer },
    latest,
  );
  return propped.answer === 'yes' ? undefined : 'not-propped';
}

/** An ask that only a person can answer is put again when the stream broke off under it. */
export function* untilUnbroken(ask: Parameters<typeof put>[0], latest: Latest): ReturnType<typeof put> {
  let ended = yield* put(ask, latest);
  while (ended.by === 'gap') ended = yield* put(ask, latest);
  return ended;
}
