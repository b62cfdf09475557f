import { type Millis, type Mm, mm } from '../../model/units.ts';
import { type Interval, spanning } from './interval.ts';
import type { Motion } from './motion.ts';
import type { AxisSample } from './track.ts';
import { turningPoint } from './turn.ts';

/** How much faster than its neighbouring reports showed an axis may have gone between two of them. */
const speedDoubt = 1.1;

/**
 * Where an axis was at a moment only known to lie between two bounds on the controller's clock, mm: all places it can have been then,
 * a turn between two reports included. Undefined outside the track and across a jump of its frame.
 */
export function placeAt(motion: Motion, when: Interval<Millis>, segment: number): Interval<Mm> | undefined {
  const { samples, jumps, runs } = motion;
  const first = samples.findLastIndex((each) => each.segment === segment && each.at <= when.low);
  const last = samples.findIndex((each, i) => each.segment === segment && each.at >= when.high && i >= first);
  if (first < 0 || last < 0) return undefined;
  if (jumps.some(({ before }) => before >= first && before < last)) return undefined;
  if (last === first + 1 && when.high === when.low) {
    const narrowed = betweenReports(motion, first, when.low);
    if (narrowed) return narrowed;
  }
  let place = hull(samples.slice(first, last + 1));
  for (const run of runs) {
    const turned =
      run.kind === 'moving' && runs.some((next) => next.kind === 'moving' && next.from === run.to);
    if (!turned || run.to < first || run.to > last) continue;
    const turn = turningPoint(samples, run.to, run.direction);
    if (turn && place) place = { low: least(place.low, turn.low), high: most(place.high, turn.high) };
  }
  return place;
}

/** A stamped moment between two reports of one-way motion: as far as either neighbour allows at the speed seen around it. */
function betweenReports(
  { samples, runs, abilities }: Motion,
  i: number,
  at: Millis,
): Interval<Mm> | undefined {
  const [a, b] = [samples[i], samples[i + 1]];
  const oneWay = runs.some((run) => run.kind === 'moving' && run.from < i && i + 1 < run.to);
  if (!a || !b || !oneWay) return undefined;
  const around = [samples[i - 1], a, b, samples[i + 2]];
  const speed = Math.max(...around.slice(1).map((each, k) => speedBetween(around[k], each))) * speedDoubt;
  const from = { low: a.position, reach: (speed * (at - a.at)) / 1000 + abilities.step };
  const to = { high: b.position, reach: (speed * (b.at - at)) / 1000 + abilities.step };
  const way = b.position >= a.position ? 1 : -1;
  const farthest = Math.min((to.high - from.low) * way, from.reach);
  const nearest = Math.max(0, (to.high - from.low) * way - to.reach);
  return spanning(mm(a.position + way * Math.min(nearest, farthest)), mm(a.position + way * farthest));
}

function speedBetween(a: AxisSample | undefined, b: AxisSample | undefined): number {
  if (!a || !b || b.at <= a.at) return 0;
  return (Math.abs(b.position - a.position) * 1000) / (b.at - a.at);
}

function hull(samples: readonly AxisSample[]): Interval<Mm> | undefined {
  const places = samples.map(({ position }) => position);
  const [first] = places;
  if (first === undefined) return undefined;
  return { low: places.reduce(least, first), high: places.reduce(most, first) };
}

const least = (a: Mm, b: Mm): Mm => (a < b ? a : b);
const most = (a: Mm, b: Mm): Mm => (a > b ? a : b);
