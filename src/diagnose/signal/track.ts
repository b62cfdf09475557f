import type { InputName } from '../../model/machine.ts';
import type { Window } from '../../model/procedure.ts';
import type { Active, EdgeReading, Level, StatusReading } from '../../model/reading.ts';
import type { Millis } from '../../model/units.ts';

/** What one input was at one report or edge. */
export interface Sample extends State {
  readonly arrived: Millis;
  readonly at: Millis;
  readonly segment: number;
  readonly from: 'status' | 'edge';
}

/** An input's reported condition: electrical level, and active or not after the polarity setting. */
export interface State {
  readonly level: Level;
  readonly active: Active;
}

export const sameState = (a: State, b: State): boolean => a.level === b.level && a.active === b.active;
export const isKnown = (state: State): boolean => state.level !== '?' || state.active !== '?';

/** One input in a status report; undefined where the stream does not carry it. */
export function stateIn(status: StatusReading, input: InputName): State | undefined {
  const index = status.inputs.indexOf(input);
  if (index < 0) return undefined;
  return { level: status.levels[index] ?? '?', active: status.active[index] ?? '?' };
}

export function sampleOfStatus(status: StatusReading, input: InputName): Sample | undefined {
  const state = stateIn(status, input);
  return (
    state && { ...state, arrived: status.arrived, at: status.at, segment: status.segment, from: 'status' }
  );
}

/** An edge tells the level only; the active bit stays what the last report said. */
export function sampleOfEdge(edge: EdgeReading, before: State | undefined): Sample {
  const { arrived, at, segment, level } = edge;
  return { level, active: before?.active ?? '?', arrived, at, segment, from: 'edge' };
}

/** All samples of one input in a window, the last one before it first. */
export function track(window: Window, input: InputName): readonly Sample[] {
  const samples: Sample[] = [];
  const add = (sample: Sample | undefined) => {
    if (sample && isKnown(sample)) samples.push(sample);
  };
  if (window.lead) add(sampleOfStatus(window.lead, input));
  for (const reading of window.readings) {
    if (reading.kind === 'status') add(sampleOfStatus(reading, input));
    if (reading.kind === 'edge' && reading.input === input) add(sampleOfEdge(reading, samples.at(-1)));
  }
  return samples;
}

/** The last status a window knows of. */
export function lastStatus(window: Window): StatusReading | undefined {
  for (let i = window.readings.length - 1; i >= 0; i--) {
    const reading = window.readings[i];
    if (reading?.kind === 'status') return reading;
  }
  return window.lead;
}

export const statuses = (window: Window): readonly StatusReading[] =>
  window.readings.filter((reading) => reading.kind === 'status');

/** All inputs the reports of a window carry. */
export const inputsOf = (window: Window): readonly InputName[] => lastStatus(window)?.inputs ?? [];
