import { type Mm, mm } from '../../model/units.ts';
import type { Interval } from './interval.ts';
import type { Direction } from './runs.ts';
import type { AxisSample } from './track.ts';

/**
 * Where an axis that came one way turned back, mm: at least as far as the farthest report, and no further than it could have run on and
 * come back between two reports at the speeds shown before and after. `turn` is the index of the farthest sample.
 */
export function turningPoint(
  samples: readonly AxisSample[],
  turn: number,
  came: Direction,
): Interval<Mm> | undefined {
  const farthest = samples[turn];
  if (!farthest) return undefined;
  const incoming = fastest(samples.slice(Math.max(0, turn - reports), turn + 1), came);
  const outgoing = fastest(samples.slice(turn, turn + reports + 1), came === 1 ? -1 : 1);
  const beyond = Math.max(
    overshoot(samples[turn - 1], farthest, incoming, outgoing, came),
    overshoot(farthest, samples[turn + 1], incoming, outgoing, came),
  );
  const hidden = mm(farthest.position + came * beyond);
  return came === 1 ? { low: farthest.position, high: hidden } : { low: hidden, high: farthest.position };
}

/** How many reports on either side tell the speed of coming and going. */
const reports = 4;

/** How far past the nearer of two neighbouring reports the axis can have been: in at one speed, out at the other, in the time between. */
function overshoot(
  a: AxisSample | undefined,
  b: AxisSample | undefined,
  incoming: number,
  outgoing: number,
  came: Direction,
): number {
  if (!a || !b || a.segment !== b.segment || incoming <= 0 || outgoing <= 0) return 0;
  const seconds = (b.at - a.at) / 1000;
  const [from, to] = [a.position * came, b.position * came];
  const peak = (from * outgoing + to * incoming + incoming * outgoing * seconds) / (incoming + outgoing);
  return Math.max(0, peak - Math.max(from, to));
}

function fastest(samples: readonly AxisSample[], direction: Direction): number {
  return samples.reduce((most, sample, i) => {
    const before = samples[i - 1];
    if (!before || sample.at <= before.at) return most;
    return Math.max(most, ((sample.position - before.position) * direction * 1000) / (sample.at - before.at));
  }, 0);
}
