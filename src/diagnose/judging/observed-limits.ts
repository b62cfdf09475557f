import type { AxisLetter } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import { mm } from '../../model/units.ts';
import type { Facts } from '../../model/verdict.ts';
import type { Observed } from '../envelope/layout.ts';
import { middleOf } from '../motion/interval.ts';

/** What earlier checks of this session measured of an axis. */
export const factsOf = (check: string, axis: AxisLetter, { known }: Scene): Facts | undefined =>
  known.verdicts.findLast((each) => each.check === check && each.subject === axis)?.facts;

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
