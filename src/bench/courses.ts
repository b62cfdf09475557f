import type { Axis } from './axis.ts';
import type { Stretch, StretchEnd } from './stretch.ts';

/** Yields stretches one after the other and is told how each ended; returns whether all went well. */
export type Course = Generator<Stretch, boolean, StretchEnd>;

/** Whether an input is active, as the controller sees it. */
export type Inputs = (input: string) => boolean;

/** How far an axis feels for its switch at most, and how much farther where two sides are squared and the second may stand well behind, mm. */
const feelsOn = { most: 30, one: 0, two: 10 };

/** One straight move; `speed` mm/s. */
export function* straight(axis: Axis, by: number, speed: number): Course {
  yield { axis, by, speed };
  return true;
}

/** Runs to the home end until the input is active, and stops there. */
export function* seek(axis: Axis, isActive: Inputs): Course {
  return (yield* approach(axis, isActive, wayOf(axis))) !== undefined;
}

/** Approach, trip, back off, slow approach, trip, release; counts from the home value where it then stands. */
export function* homing(axis: Axis, isActive: Inputs): Course {
  const { manner, homeValue, slow, backOff, turnsBack, setsZero } = axis.homing;
  if (manner === 'in place') {
    axis.zero(homeValue);
    return true;
  }
  const towards = wayOf(axis);
  const trip = yield* approach(axis, isActive, towards);
  if (trip === undefined || !turnsBack) return false;
  const away = (from: number) => from - towards * backOff - axis.counted;
  yield { axis, by: away(trip), speed: axis.homing.approach };
  if (tripped(axis, isActive)) return false;
  const farther = axis.homing.inputs.length > 1 ? feelsOn.two : feelsOn.one;
  const again = yield* touch(axis, isActive, {
    by: towards * (Math.min(backOff * 2, feelsOn.most) + farther),
    speed: slow,
  });
  if (again === undefined) return false;
  yield { axis, by: away(again), speed: slow };
  if (setsZero) axis.zero(homeValue);
  return !tripped(axis, isActive);
}

/** The count at which the controller noticed its switch; undefined where it found none. */
function* approach(
  axis: Axis,
  isActive: Inputs,
  towards: 1 | -1,
): Generator<Stretch, number | undefined, StretchEnd> {
  const { approach: speed, farthest } = axis.homing;
  const { met, at } = yield { axis, by: towards * farthest, speed, until: () => tripped(axis, isActive) };
  return met ? at : undefined;
}

/** Slowly, until every side of a beam has found its own switch; each waits for the other. */
function* touch(
  axis: Axis,
  isActive: Inputs,
  { by, speed }: { by: number; speed: number },
): Generator<Stretch, number | undefined, StretchEnd> {
  const { inputs } = axis.homing;
  const until = () => {
    if (inputs.length < 2) return tripped(axis, isActive);
    for (const [number, input] of inputs.entries()) if (isActive(input)) axis.waiting.add(number);
    return axis.waiting.size === inputs.length;
  };
  const { met, at } = yield { axis, by, speed, until };
  axis.waiting.clear();
  return met ? at : undefined;
}

const tripped = ({ homing: { inputs, heedsSwitch } }: Axis, isActive: Inputs): boolean =>
  heedsSwitch && inputs.some(isActive);

/** The way set, or the shorter one to the place where the count says the switch is. */
function wayOf({ homing: { towards, shorterWay }, counted }: Axis): 1 | -1 {
  if (!shorterWay) return towards;
  const within = ((counted % 360) + 360) % 360;
  return within > 180 ? 1 : -1;
}
