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

/** Windows do not change; what was read out of one is kept with it. */
const tracks = new WeakMap<Window, Map<string, readonly AxisSample[]>>();

/** Every reported position of one axis in a window, the last one before it first. */
export function axisTrack(window: Window, axis: string): readonly AxisSample[] {
  const ofWindow = tracks.get(window) ?? new Map<string, readonly AxisSample[]>();
  tracks.set(window, ofWindow);
  const samples = ofWindow.get(axis) ?? readTrack(window, axis);
  ofWindow.set(axis, samples);
  return samples;
}

function readTrack({ lead, readings }: Window, axis: string): readonly AxisSample[] {
  const samples: AxisSample[] = [];
  const add = (status: StatusReading) => {
    const sample = axisSample(status, axis);
    if (sample) samples.push(sample);
  };
  if (lead) add(lead);
  for (const reading of readings) if (reading.kind === 'status') add(reading);
  return samples;
}
