import type { Window } from '../../model/procedure.ts';
import { type Millis, ms } from '../../model/units.ts';
import type { Interval } from '../motion/interval.ts';
import { usualPeriod } from '../motion/jumps.ts';
import { stillFor, stillReports } from '../motion/limits.ts';
import type { Motion } from '../motion/motion.ts';

/** Where one of several axes moved or was set a new number, host clock; undefined where nothing of it changed. */
export function activeSpan({ samples, runs, jumps }: Motion): Interval<Millis> | undefined {
  const at = [
    ...runs.flatMap((run) => (run.kind === 'moving' ? [run.from, run.to] : [])),
    ...jumps.flatMap(({ before }) => [before, before + 1]),
  ].flatMap((i) => samples[i]?.arrived ?? []);
  return at.length === 0 ? undefined : { low: ms(Math.min(...at)), high: ms(Math.max(...at)) };
}

/**
 * What belongs to one axis of a window in which several home one after the other: from where the axis before it came to rest to where the next sets off, and as much
 * longer as it takes to see that it stands. Axes that go at the same time share their readings. One that nothing changed of has no part.
 */
export function ownPart(window: Window, own: Motion, others: readonly Motion[]): Window | undefined {
  const mine = activeSpan(own);
  if (!mine) return undefined;
  const settles = Math.max(stillFor * 1.5, (stillReports + 1) * usualPeriod(own.samples));
  const spans = others.flatMap((each) => activeSpan(each) ?? []);
  const before = spans.filter(({ high }) => high <= mine.low + settles).map(({ high }) => high);
  const after = spans.filter(({ low }) => low >= mine.high - settles).map(({ low }) => low);
  const from = ms(Math.max(window.from, ...before));
  const to = ms(Math.min(window.to, Math.max(mine.high, Math.min(window.to, ...after)) + settles));
  const earlier = window.readings.filter(({ arrived }) => arrived < from);
  const lead = earlier.findLast((each) => each.kind === 'status') ?? window.lead;
  return {
    from,
    to,
    lead,
    readings: window.readings.filter(({ arrived }) => arrived >= from && arrived <= to),
  };
}
