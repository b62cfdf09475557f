import type { InputName } from '../../model/machine.ts';
import type { Window } from '../../model/procedure.ts';
import type { StatusReading } from '../../model/reading.ts';
import { median } from '../../model/statistics.ts';
import { type Millis, ms } from '../../model/units.ts';
import type { Resolution } from '../../model/verdict.ts';
import { statuses, track } from './track.ts';

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
export const longestSilence = (window: Window): Millis => longestHole(window, statuses(window));

/** The same of reports that tell of one input. */
export const longestUntold = (window: Window, input: InputName): Millis =>
  longestHole(
    window,
    track(window, input).filter(({ arrived }) => arrived >= window.from),
  );

function longestHole({ from, to }: Window, heard: readonly { readonly arrived: Millis }[]): Millis {
  const times = [from, ...heard.map(({ arrived }) => arrived), to];
  return ms(times.reduce((most, time, i) => Math.max(most, time - (times[i - 1] ?? time)), 0));
}
