import type { InputName, Switch } from '../../model/machine.ts';
import type { Ended } from '../../model/procedure.ts';
import type { CheckName } from '../../model/verdict.ts';
import { timeToPlug, timeToPress } from '../limits.ts';
import type { Excursion } from '../signal/excursion.ts';
import { agree, stateIn } from '../signal/track.ts';
import type { Asking, Latest } from './asking.ts';
import { untilUnbroken } from './motors-off.ts';

interface After {
  readonly halted: boolean;
  /** The person said that she let go, and reports came after it: silence tells of no switch that it sticks. */
  readonly saidLetGo: boolean;
  /** With the plug out no level tells whether the switch is operated. */
  readonly plugIsOut: boolean;
}

/**
 * What a press may leave behind: a halt to clear by the person's own control, a switch still operated. Returns the inputs that
 * stayed away although she had let go; a latching stop is meant to stay and only has to be unlatched.
 */
export function* letGo(
  pressed: Switch,
  check: CheckName,
  moved: readonly Excursion[],
  { halted, saidLetGo, plugIsOut }: After,
  latest: Latest,
): Asking<readonly InputName[]> {
  const { subject } = pressed;
  yield* clearHalt(pressed, check, halted, latest);
  if (plugIsOut) return [];
  const held = stillAway(moved, latest);
  if (held.length === 0) return [];
  const latches = pressed.duty.includes('stop');
  const why = latches ? 'latched' : saidLetGo ? 'sticks' : 'held';
  const watch = held.map((each) => each.input);
  const released = yield* untilUnbroken(
    { check, action: 'release', subject, watch, why, seconds: timeToPress },
    latest,
  );
  if (why === 'sticks') return watch;
  return isHeardAfter(released) ? stillAway(held, latest).map((each) => each.input) : [];
}

/** "Done" was said, and the stream told something since. */
export const isHeardAfter = ({ answer, answeredAt, window }: Ended): boolean =>
  answer === 'done' &&
  answeredAt !== undefined &&
  window.readings.some(({ kind, arrived }) => kind === 'status' && arrived > answeredAt);

/** A controller that halted is cleared by the person's own control before anything else is asked of it. */
export function* clearHalt(
  { subject }: Switch,
  check: CheckName,
  halted: boolean,
  latest: Latest,
): Asking<void> {
  if (!halted || latest.status?.activity !== 'fault') return;
  yield* untilUnbroken({ check, action: 'clear', subject, seconds: timeToPlug }, latest);
}

function stillAway(moved: readonly Excursion[], latest: Latest): readonly Excursion[] {
  const { status } = latest;
  if (!status) return [];
  return moved.filter((each) => {
    const now = stateIn(status, each.input);
    return now !== undefined && !agree(now, each.rest);
  });
}
