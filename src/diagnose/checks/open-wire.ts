import type { PlugEnd } from '../../model/ask.ts';
import { type Subject, type Switch, switchOf } from '../../model/machine.ts';
import type { Check, Known, Procedure, Scene } from '../../model/procedure.ts';
import type { OutItem } from '../../model/session-facts.ts';
import type { Missing, Verdict } from '../../model/verdict.ts';
import { judgeRow, type OpenWireEvidence, rowOf } from '../judging/open-wire-row.ts';
import { polarityShared } from '../judging/polarity-shared.ts';
import { leftOut } from '../judging/row-evidence.ts';
import { withoutEvidence } from '../judging/status.ts';
import type { Asking, Latest } from '../procedures/asking.ts';
import { listenedFirst } from '../procedures/listened-first.ts';
import { mayUnplug } from '../procedures/may-unplug.ts';
import { motorsOff } from '../procedures/motors-off.ts';
import { putBack } from '../procedures/plugs.ts';
import { restMustBeRest } from '../procedures/rest-must-be-rest.ts';
import { pressInRow } from '../procedures/row-presses.ts';
import { takesAlong } from '../procedures/takes-along.ts';
import { unplugRow } from '../procedures/unplug-row.ts';
import { switchesAsked } from '../scope/switches-asked.ts';

type OpenWireItem = OpenWireEvidence | { readonly motorsOff: true };

/**
 * What happens when the wire breaks? A plug is pulled, which is a broken wire one can mend. On a normally closed contact the input
 * goes active and the machine stops; on a normally open one nothing changes, and the break goes unnoticed until the axis has hit
 * its stop. A press while the plug is out shows that it was the right plug, a press afterwards that it is in again.
 */
export const openWire: Check<OpenWireItem> = { name: 'open-wire', gather, judge, teaches };

function* gather(given: Scene): Procedure<OpenWireItem> {
  const latest: Latest = { status: given.now };
  const missing = yield* motorsOff('open-wire', given, latest);
  if (!missing) yield { keep: { motorsOff: true } };
  const flickers = missing ? [] : yield* listenedFirst('open-wire', given, latest);
  const scene = { ...given, known: { ...given.known, flickering: [...given.known.flickering, ...flickers] } };
  const out: { pressed: Switch; item: OpenWireEvidence; subject: Subject; at: PlugEnd }[] = [];
  for (const pressed of switchesAsked(scene)) {
    const item = missing ? without(pressed.subject, missing) : yield* openWireOf(pressed, scene, latest, out);
    const { subject } = pressed;
    const row = rowOf(item);
    if (row?.stillOut) out.push({ pressed, item, subject, at: row.at });
    yield { keep: item };
  }
  for (const { pressed, item } of out) {
    const closed = yield* askedBack(pressed, item, scene, latest);
    if (closed) yield { keep: closed };
  }
}

const without = (subject: Subject, missing: Missing): OpenWireEvidence => ({
  subject,
  came: 'to-nothing',
  missing,
});

function* openWireOf(
  pressed: Switch,
  scene: Scene,
  latest: Latest,
  out: readonly OutItem[],
): Asking<OpenWireEvidence> {
  const { subject, input } = pressed;
  const target = scene.known.answering[subject] ?? input;
  if (scene.known.flickering.includes(target)) return { subject, came: 'flickers' };
  const loose = out.find((each) => takesAlong(each, pressed, scene.machine));
  if (loose) {
    const inChain = switchOf(scene.machine, loose.subject)?.input === input;
    return without(subject, inChain ? 'chain-open' : 'something-out');
  }
  const at = yield* mayUnplug('open-wire', pressed, latest);
  if (at !== 'switch' && at !== 'controller') return without(subject, at);
  // One that was left out when the session ended goes back in before its row begins.
  const left = scene.out?.find((each) => each.subject === subject);
  if (left && (yield* putBack(pressed, left.at, 'still-out', latest)) === 'refused')
    return { subject, came: 'left-out', row: leftOut(left.at) };
  const rest = yield* restMustBeRest('open-wire', pressed, target, scene, latest);
  return { subject, came: 'row', rest, row: yield* unplugRow(pressed, at, scene, latest) };
}

/** Before the check ends, what is still out is asked back once more; only a press that answers closes it. */
function* askedBack(
  pressed: Switch,
  item: OpenWireEvidence,
  scene: Scene,
  latest: Latest,
): Asking<OpenWireEvidence | undefined> {
  if (item.came !== 'row' && item.came !== 'left-out') return undefined;
  const { row } = item;
  if ((yield* putBack(pressed, row.at, 'still-out', latest)) === 'refused') return undefined;
  const after = yield* pressInRow(pressed, 'answer', scene, latest);
  if (after.kind === 'refused' || after.moved.length === 0) return undefined;
  const { missing, ...rest } = row;
  const open = missing === 'replug' ? {} : missing ? { missing } : {};
  return { ...item, row: { ...rest, ...open, after, stillOut: false, traces: [...row.traces, after.trace] } };
}

function judge(kept: readonly OpenWireItem[], scene: Scene): readonly Verdict[] {
  const verdicts = switchesAsked(scene).map((pressed) => {
    const item = kept.findLast((each) => 'subject' in each && each.subject === pressed.subject);
    if (!item || !('subject' in item))
      return withoutEvidence({ check: 'open-wire', subject: pressed.subject }, 'stopped');
    return judgeRow(item, pressed, scene);
  });
  return polarityShared(verdicts, scene);
}

function teaches(kept: readonly OpenWireItem[], scene: Scene): Partial<Known> {
  return { motorsOff: scene.known.motorsOff || kept.some((item) => 'motorsOff' in item) };
}
