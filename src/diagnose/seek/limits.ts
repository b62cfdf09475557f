import { type Millis, type Mm, mm, ms } from '../../model/units.ts';
import { stoppingDistance } from '../stopping/distance.ts';

/** Every number a seek is watched and judged with, with its unit and where it comes from. */

/** An alarm stands on this many reports in a row: one wrong report stops nobody, two do not come by chance. */
export const reportsForAlarm = 2;

/** An input that answers within this many reports of its own axis's motion was worked by it. */
export const ownTripWithin = 10;

/** Back from its farthest point without a trip seen, an axis may have backed off by this much and not have turned the wrong way, mm: twice the longest back-off in common use (no source: 1 to 10 mm). */
export const longestBackOff = mm(10);

/** No switch in common use stays operated over more than this way back, mm (common practice, no source: contact levers free within 1 mm, magnets within 2). */
export const clearsWithin = mm(4);

/** What is assumed of an axis whose file does not tell: 50 mm/s² and 25 ms, slower than common controllers (common practice, no source). */
const sluggish = { acceleration: 50, reaction: 25 };
/** How far past its stopping distance an axis is before it is said to push on. */
const runOnDoubt = 1.5;

/** The way an axis may go on past the first report of its trip, mm. `speed` mm/s, `acceleration` mm/s², `reaction` ms. */
export function mayRunOn(
  speed: number,
  acceleration: number | undefined,
  reaction: number | undefined,
  step: Mm,
): Mm {
  const stop = stoppingDistance({
    speed,
    acceleration: acceleration ?? sluggish.acceleration,
    reaction: reaction ?? sluggish.reaction,
  });
  return mm(stop * runOnDoubt + 2 * step);
}

/** A seek slower than this share of the declared speed crawls ... */
export const crawlShare = 0.2;
/** ... or, where none is declared, slower than 30 mm/min, mm/s: no first approach is set so slow (common practice, no source: 300 mm/min and more). */
export const crawlSpeed = 0.5;

/** An approach must last this long, ms, to show its speed: the ramps of common axes are over by then. */
export const shortestForSpeed: Millis = ms(500);

/** A homing that takes longer than this without a position changing was not reported, ms: zeroing in place takes no time. */
export const frozenFor: Millis = ms(1000);

/** What works an input for no longer than this, ms, is no dog: noise and relays last up to 10 ms (common practice, no source), and 100 ms at 20 mm/s are 2 mm. */
export const shortestTrip: Millis = ms(100);
/** Another switch must answer for longer than this, ms, before it stops anybody: noise of drives and relays is over by then. */
export const alarmsAfter: Millis = ms(25);

/** How far one side of a beam goes on after the other has found its switch, mm: racked further it is past squaring (judgement, no source). */
export const squaresWithin = mm(10);

/** How far trips may lie apart and still be one place, mm: twice what belt-driven routers repeat (common practice, no source). */
export const onePlace = mm(0.2);
/** A trip seen no better than this, mm, marks no place (judgement, no source). */
export const widestTrip = mm(1);
/** As many trips in one place as make a place certain. */
export const tripsForPlace = 3;
/** How far the ways of seeks that ended alike may differ, as a share of their length. */
export const alikeShare = 0.01;
