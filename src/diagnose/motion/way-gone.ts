import type { AxisLetter } from '../../model/machine.ts';
import type { Window } from '../../model/procedure.ts';
import { type Mm, mm } from '../../model/units.ts';
import { axisTrack } from './track.ts';

/** How far the controller says that an axis went between the first and the last report, mm or degrees; undefined where it told no position, or none but one. */
export function wayGone(window: Window, letter: AxisLetter): Mm | undefined {
  const samples = axisTrack(window, letter);
  const [first, last] = [samples[0], samples.at(-1)];
  const way = first && last ? Math.abs(last.position - first.position) : 0;
  return way > 0 ? mm(way) : undefined;
}
