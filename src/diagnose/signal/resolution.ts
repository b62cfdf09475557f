import type { Window } from '../../model/procedure.ts';
import { median } from '../../model/statistics.ts';
import { type Millis, ms } from '../../model/units.ts';
import type { Resolution } from '../../model/verdict.ts';
import { statuses } from './track.ts';

/**
 * How finely the stream saw: period between reports on the controller's clock, within segments. A pulse that lasts as long as
 * the longest hole is sure to meet a report; a shorter one may fall between two. Undefined under two reports.
 */
export function resolutionOf(window: Window): Resolution | undefined {
  const reports = statuses(window);
  const periods = reports.flatMap((report, i) => {
    const before = reports[i - 1];
    return before && before.segment === report.segment ? [report.at - before.at] : [];
  });
  const middle = median(periods);
  if (middle === undefined) return undefined;
  const longest = ms(periods.reduce((most, period) => Math.max(most, period), 0));
  return {
    reports: reports.length,
    median: ms(middle),
    longest,
    surePulse: longest,
    lost: sum(window.readings.map((reading) => ('lost' in reading ? reading.lost : 0))),
    unreadable: window.readings.filter((reading) => reading.kind === 'unreadable').length,
  };
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** The longest time within a window in which no report arrived, host clock. */
export function longestSilence(window: Window): Millis {
  const times = [window.from, ...statuses(window).map((status) => status.arrived), window.to];
  return ms(times.reduce((most, time, i) => Math.max(most, time - (times[i - 1] ?? time)), 0));
}
