import type { InputName, Switch } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import type { CheckName } from '../../model/verdict.ts';
import type { RestCheck } from '../judging/press-evidence.ts';
import { plugAttempts, timeToAnswer, timeToPlug } from '../limits.ts';
import { type State, stateIn } from '../signal/track.ts';
import type { Asking, Latest } from './asking.ts';
import { untilUnbroken } from './motors-off.ts';

/**
 * An active input with nobody at it may be wired upside down, or something may be standing on the switch: the stream cannot tell
 * them apart, the person can. Where something is, it is moved off first.
 */
export function* restMustBeRest(
  check: CheckName,
  pressed: Switch,
  input: InputName,
  scene: Scene,
  latest: Latest,
): Asking<RestCheck> {
  const { subject } = pressed;
  if (scene.known.restInDoubt.includes(subject)) return 'in-doubt';
  if (scene.known.touchedAsked.includes(subject)) return 'explained';
  for (let attempt = 0; attempt < plugAttempts; attempt++) {
    const status = latest.status ?? latest.before;
    const state = status && stateIn(status, input);
    if (!state || !looksOperated(state, pressed)) return 'at-rest';
    const look = yield* untilUnbroken(
      { check, action: 'look', topic: 'touched', subject, seconds: timeToAnswer },
      latest,
    );
    if (look.answer === 'no') return 'explained';
    if (look.answer !== 'yes') return 'in-doubt';
    yield* untilUnbroken(
      { check, action: 'release', subject, watch: [input], why: 'held', seconds: timeToPlug },
      latest,
    );
  }
  return 'in-doubt';
}

/** Reported active, or the level that the declared contact and circuit give when operated. */
function looksOperated(state: State, pressed: Switch): boolean {
  if (state.active === '1') return true;
  const conducting = conductingLevel(pressed);
  if (!conducting || pressed.contact === 'unknown' || state.level === '?') return false;
  const conductsAtRest = pressed.contact === 'normally closed';
  return (state.level === conducting) !== conductsAtRest;
}

function conductingLevel(pressed: Switch): 'H' | 'L' | undefined {
  if (pressed.circuit?.kind === 'contact to ground') return 'L';
  if (pressed.circuit?.kind === 'contact to supply') return 'H';
  return undefined;
}
