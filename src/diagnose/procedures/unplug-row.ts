import type { PlugEnd } from '../../model/ask.ts';
import type { InputName, Switch } from '../../model/machine.ts';
import type { Ended, Scene } from '../../model/procedure.ts';
import type { RowEvidence } from '../judging/row-evidence.ts';
import { plugAttempts, rowAttempts } from '../limits.ts';
import { resolutionOf } from '../signal/resolution.ts';
import { settledState } from '../signal/settled.ts';
import { traceOf } from '../signal/trace.ts';
import { agree, inputsOf, stateIn } from '../signal/track.ts';
import { type Asking, type Latest, put, refusal } from './asking.ts';
import { clearHalt } from './let-go.ts';
import { putBack, unplugAsk } from './plugs.ts';
import type { PressOutcome } from './press-once.ts';
import { controlPress, pressInRow } from './row-presses.ts';

/** Begins the row anew where the stream broke off inside it: half a row before a restart and half after are no row. */
export function* unplugRow(
  pressed: Switch,
  first: PlugEnd,
  scene: Scene,
  latest: Latest,
): Asking<RowEvidence> {
  let at = first;
  for (let attempt = 1; ; attempt++) {
    const row = yield* oneRow(pressed, at, scene, latest);
    if (row.missing === 'cannot' && at === 'switch' && !row.stillOut) at = 'controller';
    else if (row.missing !== 'stream-broke-off' || attempt >= rowAttempts) return row;
  }
}

function* oneRow(pressed: Switch, at: PlugEnd, scene: Scene, latest: Latest): Asking<RowEvidence> {
  const target = scene.known.answering[pressed.subject];
  const nothing: RowEvidence = {
    at,
    inputs: new Map(),
    wrongPlugs: 0,
    stillOut: false,
    faultBefore: false,
    traces: [],
  };
  for (let wrongPlugs = 0; ; wrongPlugs++) {
    // Where the stream has just come back, a hand may still be on the switch: what was before it broke off was rest.
    const before = latest.status ?? latest.before;
    const pulled = yield* put(unplugAsk(pressed, at, wrongPlugs > 0), latest);
    if (pulled.by === 'gap') return yield* brokenOff(pressed, { ...nothing, wrongPlugs }, latest);
    const why = refusal(pulled);
    if (why) return { ...nothing, wrongPlugs, missing: why };
    const faultBefore = before?.activity === 'fault';
    const row = { ...nothing, wrongPlugs, faultBefore, ...levelsOf(pulled, before, target ?? pressed.input) };
    const control = yield* controlPress(pressed, target, scene, latest);
    if (control.kind === 'missing' && control.why === 'stream-broke-off')
      return yield* brokenOff(pressed, row, latest);
    const flickers = row.inputs.get(target ?? pressed.input)?.out.kind === 'flickers';
    if (control.kind !== 'answered' || flickers) {
      const known = control.kind === 'missing' ? { missing: control.why } : { control: control.press };
      return yield* backAndPressed(pressed, { ...row, ...known }, scene, latest);
    }
    const back = yield* putBack(pressed, at, 'wrong-plug', latest);
    if (back === 'back') yield* clearHalt(pressed, 'open-wire', !faultBefore, latest);
    const wrong = { ...row, wrongPlugs: wrongPlugs + 1 };
    if (back === 'broke-off') return { ...wrong, missing: 'stream-broke-off' };
    if (back === 'refused') return { ...wrong, stillOut: true, missing: 'replug' };
    if (wrong.wrongPlugs >= plugAttempts) return { ...wrong, missing: 'control-press' };
  }
}

function levelsOf(
  pulled: Ended,
  before: Latest['status'],
  cited: InputName,
): Pick<RowEvidence, 'inputs' | 'resolution' | 'traces'> {
  const { window, answeredAt } = pulled;
  const lead = before ?? window.lead;
  const resolution = resolutionOf(window);
  return {
    inputs: new Map(
      inputsOf(window).map((input) => [
        input,
        { rest: lead && stateIn(lead, input), out: settledState(window, input, answeredAt) },
      ]),
    ),
    ...(resolution && { resolution }),
    traces: [traceOf(window, 'out', [cited])],
  };
}

/** The stream broke off: nobody knows whether the plug is in, so it is asked back in before the row begins anew. */
function* brokenOff(pressed: Switch, row: RowEvidence, latest: Latest): Asking<RowEvidence> {
  const back = yield* putBack(pressed, row.at, 'still-out', latest);
  return back === 'refused'
    ? { ...row, missing: 'replug', stillOut: true }
    : { ...row, missing: 'stream-broke-off' };
}

/** Plug back in, one more press: where the switch is known to answer and now does not, the plug is not in whatever was said. */
function* backAndPressed(
  pressed: Switch,
  row: RowEvidence,
  scene: Scene,
  latest: Latest,
): Asking<RowEvidence> {
  const target = scene.known.answering[pressed.subject];
  for (let attempt = 1; ; attempt++) {
    const back = yield* putBack(pressed, row.at, attempt > 1 ? 'stream-says-out' : undefined, latest);
    if (back === 'refused') return { ...row, stillOut: true, missing: 'replug' };
    if (back === 'broke-off') return { ...row, missing: 'stream-broke-off' };
    // Not while the plug is out: a limit that is active cannot be cleared.
    yield* clearHalt(pressed, 'open-wire', !row.faultBefore, latest);
    const after = yield* pressFromRowsRest(pressed, row, scene, latest);
    if (after.kind === 'refused') {
      return {
        ...row,
        missing: after.why === 'stream-broke-off' ? after.why : (row.missing ?? 'press-after-replug'),
      };
    }
    const answered = after.moved.some((each) => each.input === (target ?? each.input));
    if (!answered && target && attempt < plugAttempts - 1) continue;
    const traces = [...row.traces, ...(row.control ? [row.control.trace] : []), after.trace];
    return { ...row, after, traces, stillOut: !answered && target !== undefined };
  }
}

/**
 * A lever that stayed in while the plug was out, where no level told of it, comes free with the first press after: what moved then
 * did not begin at the rest of the row, and it is pressed once more.
 */
function* pressFromRowsRest(
  pressed: Switch,
  { inputs }: RowEvidence,
  scene: Scene,
  latest: Latest,
): Asking<PressOutcome> {
  for (let attempt = 1; ; attempt++) {
    const after = yield* pressInRow(pressed, 'answer', scene, latest);
    if (after.kind === 'refused') return after;
    const beganElsewhere = after.moved.some((each) => {
      const rest = inputs.get(each.input)?.rest;
      return rest !== undefined && !agree(rest, each.rest);
    });
    if (!beganElsewhere) return after;
    if (attempt === rowAttempts) return { kind: 'refused', why: 'rest-in-doubt' };
  }
}
