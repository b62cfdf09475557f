import type { Window } from '../../model/procedure.ts';
import type { StatusReading } from '../../model/reading.ts';
import { median } from '../../model/statistics.ts';
import { type Millis, ms } from '../../model/units.ts';
import type { Resolution } from '../../model/verdict.ts';
import { statuses } from './track.ts';

/**
 * How finely the stream saw: period between reports on the controller's clock, within segments. A pulse that lasts as long as
 * the longest hole is sure to meet a report; a shorter one may fall between two. Undefined under two reports.
 */
export function resolutionOf(window: Window): Resolution | undefined {
  const periods: number[] = [];
  let before: StatusReading | undefined;
  let [reports, lost, unreadable] = [0, 0, 0];
  for (const reading of window.readings) {
    if (reading.kind === 'unreadable') unreadable++;
    if ('lost' in reading) lost += reading.lost;
    if (reading.kind !== 'status') continue;
    reports++;
    if (before?.segment === reading.segment) periods.push(reading.at - before.at);
    before = reading;
  }
  const middle = median(periods);
  if (middle === undefined) return undefined;
  const longest = ms(periods.reduce((most, period) => Math.max(most, period), 0));
  return { reports, median: ms(middle), longest, surePulse: longest, lost, unreadable };
}

/** The longest time within a window in which no report arrived, host clock. */
export function longestSilence(window: Window): Millis {
  const times = [window.from, ...statuses(window).map((status) => status.arrived), window.to];
  return ms(times.reduce((most, time, i) => Math.max(most, time - (times[i - 1] ?? time)), 0));
}
