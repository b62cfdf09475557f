import { type Millis, type Mm, mm } from '../../model/units.ts';
import type { InputEdge } from '../motion/edges.ts';
import { distanceBetween, exactly, type Interval, spanning } from '../motion/interval.ts';
import type { Motion } from '../motion/motion.ts';
import type { Direction } from '../motion/runs.ts';
import { cruiseSpeed, type Speed } from '../motion/speed.ts';
import { turningPoint } from '../motion/turn.ts';

/** One way of an axis from rest or a turn to the next, pauses in the same direction included. */
export interface Leg {
  readonly direction: Direction;
  /** Indexes into the motion's samples, both included. */
  readonly from: number;
  readonly to: number;
  /** Where it began and ended: further out than the reports show where it turned between two. */
  readonly starts: Interval<Mm>;
  readonly ends: Interval<Mm>;
  /** mm, never negative. */
  readonly distance: Interval<Mm>;
  readonly speed: Speed | undefined;
  readonly at: Interval<Millis>;
  readonly segment: number;
}

/** The ways an axis went, one after the other; a jump of the frame ends one. */
export function legsOf(motion: Motion): readonly Leg[] {
  const { samples, runs, jumps } = motion;
  const ways: { direction: Direction; from: number; to: number; turns: boolean }[] = [];
  for (const [i, run] of runs.entries()) {
    if (run.kind !== 'moving') continue;
    const last = ways.at(-1);
    const next = runs[i + 1];
    const turns = next?.kind === 'moving' && next.from === run.to;
    const parted = jumps.some(({ before }) => last && before >= last.to && before < run.from);
    if (last && last.direction === run.direction && !parted) Object.assign(last, { to: run.to, turns });
    else ways.push({ direction: run.direction, from: run.from, to: run.to, turns });
  }
  let turnedAt: Interval<Mm> | undefined;
  return ways.flatMap(({ direction, from, to, turns }) => {
    const [first, last] = [samples[from], samples[to]];
    if (!first || !last) return [];
    const starts = turnedAt ?? exactly(first.position);
    const speed = cruiseSpeed(samples.slice(from, to + 1), motion.abilities.step);
    const ends = (turns && turningPoint(samples, to, direction)) || endBefore(motion, to, speed?.value ?? 0);
    turnedAt = turns ? ends : undefined;
    return {
      direction,
      from,
      to,
      starts,
      ends,
      distance: distanceBetween(starts, ends),
      speed,
      at: { low: first.at, high: last.at },
      segment: first.segment,
    };
  });
}

/** Where the last report showed it; where its frame was set anew before the next one, as far on as it can have gone until then. */
function endBefore({ samples, jumps }: Motion, to: number, speed: number): Interval<Mm> {
  const [last, next] = [samples[to], samples[to + 1]];
  const position = last?.position ?? mm(Number.NaN);
  if (!last || !next || !jumps.some(({ before }) => before === to)) return exactly(position);
  return spanning(position, mm(position + (speed * (next.at - last.at)) / 1000));
}

/** Whether an edge fell within a leg, or between its last report and the next. */
export function fallsIn(edge: InputEdge, leg: Leg, motion: Motion): boolean {
  const after = motion.samples[leg.to + 1]?.at ?? Number.POSITIVE_INFINITY;
  return (
    edge.segment === leg.segment && edge.at.high >= leg.at.low && edge.at.low <= Math.max(leg.at.high, after)
  );
}
