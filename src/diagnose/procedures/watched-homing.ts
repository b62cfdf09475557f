import type { AxisLetter, InputName } from '../../model/machine.ts';
import type { Ended, MotionKnown, Window } from '../../model/procedure.ts';
import type { CheckName } from '../../model/verdict.ts';
import { rowAttempts, timeToMove } from '../limits.ts';
import { abilitiesOf, statesAtRest } from '../seek/abilities.ts';
import { expectationOf } from '../seek/expect.ts';
import { SeekGuard } from '../seek/guard.ts';
import type { SeekRoles } from '../seek/roles.ts';
import { reallyExpected, senseOf } from '../seek/sense.ts';
import type { State } from '../signal/track.ts';
import { type Asking, type Latest, put } from './asking.ts';
import { lateOf } from './before-motion.ts';

/** Axes with what each of their inputs means. */
export type Homing = readonly { readonly axis: AxisLetter; readonly roles: SeekRoles }[];

/** One homing as it ended, with what was said while it was watched. */
export interface WatchedHoming {
  readonly ended: Ended;
  readonly guard: SeekGuard;
  /** Inputs' states as it began. */
  readonly rest: Readonly<Record<InputName, State>>;
  /** Attempts that the stream broke off, oldest first. */
  readonly brokenOff: readonly Window[];
}

/** Asks for a homing, of one axis or of all, and watches it; asked again where the stream broke off. */
export function* watchHoming(
  check: CheckName,
  axis: AxisLetter | 'all',
  homing: Homing,
  latest: Latest,
  motion: MotionKnown,
): Asking<WatchedHoming> {
  const brokenOff: Window[] = [];
  for (;;) {
    const rest = statesAtRest(latest.status);
    const guard = new SeekGuard(
      homing.map((each) => ({ axis: each.axis, expectation: expected(each, rest, motion) })),
    );
    const late = lateOf(
      latest,
      homing.map(({ roles }) => roles.axis),
    );
    const ask = { check, action: 'home', axis, seconds: timeToMove, ...(late && { late }) } as const;
    const ended = yield* put(ask, latest, guard);
    const isOver = ended.by !== 'gap' || guard.hasAlarmed || brokenOff.length + 1 >= rowAttempts;
    if (isOver) return { ended, guard, rest, brokenOff };
    brokenOff.push(ended.window);
  }
}

/** What an axis can do, with the grid of its first move and of what was seen since. */
export const gridOf = (
  { axis, roles }: Homing[number],
  motion: MotionKnown,
  window?: Window,
): ReturnType<typeof abilitiesOf> => {
  const first = motion.tried[axis]?.window;
  return abilitiesOf(roles.axis, [...(first ? [first] : []), ...(window ? [window] : [])]);
};

const expected = (each: Homing[number], rest: WatchedHoming['rest'], motion: MotionKnown) =>
  reallyExpected(
    expectationOf(each.roles, { rest, ...gridOf(each, motion) }),
    senseOf(motion.tried[each.axis]),
  );
