import type { Switch } from '../../model/machine.ts';
import type { Check, Procedure, Scene } from '../../model/procedure.ts';
import type { Verdict } from '../../model/verdict.ts';
import { withoutEvidence } from '../judging/status.ts';
import { judgeStop, type StopEvidence } from '../judging/stop-function.ts';
import { timeToAnswer } from '../limits.ts';
import type { Asking, Latest } from '../procedures/asking.ts';
import { untilUnbroken } from '../procedures/motors-off.ts';
import { letOut, pressStop, readyForStop } from '../procedures/press-stop.ts';
import { switchesAsked } from '../scope/switches-asked.ts';

/**
 * Does the stop take the power away? A status bit that follows the button shows only that the button has a spare contact; that the
 * drives lost their power a person must see. And letting the button out again must start nothing (IEC 60204-1, 9.2 and 10.7).
 */
export const stop: Check<StopEvidence> = {
  name: 'stop',
  gather,
  judge,
  teaches: () => ({ motorsOff: false }),
};

const stopsAsked = (scene: Scene): readonly Switch[] =>
  switchesAsked(scene).filter(({ duty }) => duty.includes('stop'));

function* gather(scene: Scene): Procedure<StopEvidence> {
  const latest: Latest = { status: scene.now };
  for (const pressed of stopsAsked(scene)) yield { keep: yield* stopOf(pressed, scene, latest) };
}

function* stopOf(pressed: Switch, scene: Scene, latest: Latest): Asking<StopEvidence> {
  const { subject, input } = pressed;
  const unready = yield* readyForStop(pressed, scene, latest);
  if (unready) return { subject, missing: unready };
  const press = yield* pressStop(pressed, scene, latest);
  if (typeof press === 'string') return { subject, missing: press };
  const look = yield* untilUnbroken(
    { check: 'stop', action: 'look', topic: 'power', subject, seconds: timeToAnswer },
    latest,
  );
  const out = yield* letOut(pressed, press, latest);
  return {
    subject,
    input,
    target: press.target,
    flickers: scene.known.flickering.includes(press.target),
    move: press.move,
    latches: out.latches,
    power: look.answer,
    restarted: out.restarted,
    returned: out.returned,
    traces: [press.trace, ...out.traces],
  };
}

function judge(kept: readonly StopEvidence[], scene: Scene): readonly Verdict[] {
  return stopsAsked(scene).map(({ subject }) => {
    const item = kept.find((each) => each.subject === subject);
    return item ? judgeStop(item) : withoutEvidence({ check: 'stop', subject }, 'stopped');
  });
}
