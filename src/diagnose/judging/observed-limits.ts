import type { AxisLetter } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import { mm } from '../../model/units.ts';
import type { CheckName, Facts } from '../../model/verdict.ts';
import type { Observed } from '../envelope/layout.ts';
import { middleOf } from '../motion/interval.ts';
import { lastOf } from '../scope/last-verdict.ts';

/** What earlier checks of this session measured of an axis. */
export const factsOf = (check: CheckName, axis: AxisLetter, scene: Scene): Facts | undefined =>
  lastOf(check, axis, scene)?.facts;

/** Where the home switch of an axis trips in the frame that its homing set, its differential, and how well it repeats. */
export function observedOf(axis: AxisLetter, scene: Scene): Observed {
  const homing = factsOf('homing', axis, scene)?.homing;
  const repeat = factsOf('repeat', axis, scene)?.repeat;
  const homes = scene.machine.axes.find(({ letter }) => letter === axis)?.homes;
  if (!homing) return repeat ? { homeSpan: mm(repeat.range) } : {};
  const trip = homing.slowTrip ?? homing.trip;
  // The trip was told in the numbers from before zero was set.
  const shift = homing.zero === 'jump' ? homing.shift : { low: 0, high: 0 };
  const isPlaced = trip && shift && homes && homing.zero !== 'not-seen';
  return {
    ...(isPlaced && { trips: { [homes]: mm(middleOf(trip) + middleOf(shift)) } }),
    ...(homing.differential && { differential: mm(middleOf(homing.differential)) }),
    ...(repeat && { homeSpan: mm(repeat.range) }),
  };
}
