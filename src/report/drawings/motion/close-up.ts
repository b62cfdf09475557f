import type { AxisTrack } from '../../../model/motion-facts.ts';
import { eventsOf } from '../../../words/motion/track-words.ts';

/** Events packed into less than this share of the way are hard to tell apart in the whole drawing. */
const crowded = 0.25;
/** Shown before the first event and after the last, as a share of the time between. */
const around = 0.15;

/**
 * The stretch of a motion in which everything happened, where that is a small part of the way; undefined where the whole shows it well. Times stay
 * those of the whole, so that both drawings and the table agree.
 */
export function closeUp(track: AxisTrack): AxisTrack | undefined {
  const events = eventsOf(track);
  const [first, last] = [events[0], events.at(-1)];
  if (!first || !last || events.length < 3) return undefined;
  const spare = Math.max((last.t.high - first.t.low) * around, 50);
  const [from, to] = [first.t.low - spare, last.t.high + spare];
  const inside = track.points.filter(({ t }) => t >= from && t <= to);
  const way = extentOf(track.points);
  if (inside.length < 2 || extentOf(inside) > way * crowded) return undefined;
  return { ...track, points: inside };
}

function extentOf(points: AxisTrack['points']): number {
  const places = points.map(({ position }) => position as number);
  return places.length === 0 ? 0 : Math.max(...places) - Math.min(...places);
}
