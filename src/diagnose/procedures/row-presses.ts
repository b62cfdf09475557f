import type { InputName, Switch } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import type { Missing } from '../../model/verdict.ts';
import type { Pressed } from '../judging/press-evidence.ts';
import { plugAttempts } from '../limits.ts';
import type { Asking, Latest } from './asking.ts';
import { type PressOutcome, pressOnce } from './press-once.ts';

/** What pressing a switch whose plug is out showed. */
export type ControlPress =
  | { readonly kind: 'quiet'; readonly press: Pressed }
  | { readonly kind: 'answered'; readonly press: Pressed }
  | { readonly kind: 'missing'; readonly why: Missing };

/**
 * The control press: without one that goes unanswered while the plug is out, a silent unplug proves nothing, for it may have been
 * another plug. `target` is the input that is known to answer; undefined: any that moves is an answer.
 */
export function* controlPress(
  pressed: Switch,
  target: InputName | undefined,
  scene: Scene,
  latest: Latest,
): Asking<ControlPress> {
  for (let attempt = 1; ; attempt++) {
    const outcome = yield* pressInRow(pressed, 'no-answer', scene, latest);
    if (outcome.kind === 'refused') {
      return { kind: 'missing', why: outcome.why === 'stream-broke-off' ? outcome.why : 'control-press' };
    }
    const movers = outcome.moved.map((each) => each.input);
    const answered = target === undefined ? movers.length > 0 : movers.includes(target);
    if (answered) return { kind: 'answered', press: outcome };
    if (outcome.confirmed && movers.length === 0) return { kind: 'quiet', press: outcome };
    if (attempt >= plugAttempts - 1) return { kind: 'missing', why: 'control-press' };
  }
}

export function pressInRow(
  pressed: Switch,
  expect: 'answer' | 'no-answer',
  scene: Scene,
  latest: Latest,
): Asking<PressOutcome> {
  const label = expect === 'answer' ? 'press-after-replug' : 'press-while-out';
  const deaf = scene.known.flickering;
  return pressOnce(
    pressed,
    { check: 'open-wire', round: 1, rounds: 1, expect, deaf, label, onGap: 'give-up' },
    latest,
  );
}
