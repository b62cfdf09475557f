import type { Window } from '../../model/procedure.ts';
import type { Activity, StatusReading } from '../../model/reading.ts';
import type { Millis, Mm } from '../../model/units.ts';

/** Where one axis was commanded to be at one report. */
export interface AxisSample {
  readonly arrived: Millis;
  readonly at: Millis;
  readonly segment: number;
  readonly position: Mm;
  readonly activity: Activity;
  /** Reports that never arrived between this one and the one before. */
  readonly lost: number;
}

/** The axis in one report; undefined where the stream does not carry its position. */
export function axisSample(status: StatusReading, axis: string): AxisSample | undefined {
  const position = status.positions[status.axes.indexOf(axis)];
  if (position === undefined) return undefined;
  const { arrived, at, segment, activity, lost } = status;
  return { arrived, at, segment, position, activity, lost };
}

/** Every reported position of one axis in a window, the last one before it first. */
export function axisTrack(window: Window, axis: string): readonly AxisSample[] {
  const statuses = window.readings.filter((reading) => reading.kind === 'status');
  const all = window.lead ? [window.lead, ...statuses] : statuses;
  return all.flatMap((status) => axisSample(status, axis) ?? []);
}

/** The axes a window reports positions of, in the order of the stream. */
export function axesIn(window: Window): readonly string[] {
  const last = window.readings.findLast((reading) => reading.kind === 'status') ?? window.lead;
  return last?.axes.filter((_, i) => last.positions[i] !== undefined) ?? [];
}
