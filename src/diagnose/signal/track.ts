import type { InputName } from '../../model/machine.ts';
import type { Window } from '../../model/procedure.ts';
import type { Active, EdgeReading, Level, StatusReading } from '../../model/reading.ts';
import type { Millis } from '../../model/units.ts';
import { isUntold, isWhole, withLastTold } from './last-told.ts';

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

/** Alike as far as both are known: what is not reported is no change. */
export const agree = (a: State, b: State): boolean =>
  (a.level === b.level || a.level === '?' || b.level === '?') &&
  (a.active === b.active || a.active === '?' || b.active === '?');

/** What is known once `now` was reported: what it leaves untold, `before` told last. */
export const knownAfter = (now: State, before: State | undefined): State =>
  now.level !== '?' && now.active !== '?'
    ? now
    : {
        level: now.level === '?' ? (before?.level ?? '?') : now.level,
        active: now.active === '?' ? (before?.active ?? '?') : now.active,
      };

/** One input in a status report; undefined where the report does not tell of it. */
export function stateIn(status: StatusReading, input: InputName): State | undefined {
  const index = status.inputs.indexOf(input);
  if (index < 0 || isUntold(status, index)) return undefined;
  return { level: status.levels[index] ?? '?', active: status.active[index] ?? '?' };
}

/** Nothing about any input is new: a stream whose inputs stand still hands over the same lists again. */
export const tellsTheSame = (before: StatusReading, now: StatusReading): boolean =>
  before.levels === now.levels && before.active === now.active && before.inputs === now.inputs;

/** An edge tells the level only; the active bit stays what the last report said. */
export function sampleOfEdge(edge: EdgeReading, before: State | undefined): Sample {
  const { arrived, at, segment, level } = edge;
  return { level, active: before?.active ?? '?', arrived, at, segment, from: 'edge' };
}

/** Windows do not change; what was read out of one is kept with it. */
const tracks = new WeakMap<Window, Map<InputName, readonly Sample[]>>();

/** All samples of one input in a window, the last one before it first. */
export function track(window: Window, input: InputName): readonly Sample[] {
  const ofWindow = tracks.get(window) ?? new Map<InputName, readonly Sample[]>();
  tracks.set(window, ofWindow);
  const samples = ofWindow.get(input) ?? readTrack(window, input);
  ofWindow.set(input, samples);
  return samples;
}

function readTrack({ lead, readings }: Window, input: InputName): readonly Sample[] {
  const samples: Sample[] = [];
  let inputs: readonly InputName[] | undefined;
  let index = -1;
  const addStatus = (status: StatusReading) => {
    if (status.inputs !== inputs) {
      inputs = status.inputs;
      index = inputs.indexOf(input);
    }
    const level = status.levels[index] ?? '?';
    const active = status.active[index] ?? '?';
    if (level === '?' && active === '?') return;
    samples.push({
      level,
      active,
      arrived: status.arrived,
      at: status.at,
      segment: status.segment,
      from: 'status',
    });
  };
  if (lead) addStatus(lead);
  for (const reading of readings) {
    if (reading.kind === 'status') addStatus(reading);
    else if (reading.kind === 'edge' && reading.input === input)
      samples.push(sampleOfEdge(reading, samples.at(-1)));
  }
  return samples;
}

/** The last status of a window, and of what that leaves untold what the window last knew. */
export function lastStatus({ lead, readings }: Window): StatusReading | undefined {
  const last = readings.findLast((reading) => reading.kind === 'status') ?? lead;
  if (!last || isWhole(last)) return last;
  let told = lead;
  for (const reading of readings) {
    if (reading.kind === 'gap') told = undefined;
    if (reading.kind === 'status') told = withLastTold(reading, told);
  }
  return told ?? last;
}

export const statuses = (window: Window): readonly StatusReading[] =>
  window.readings.filter((reading) => reading.kind === 'status');

/** All inputs the reports of a window carry. */
export const inputsOf = ({ lead, readings }: Window): readonly InputName[] =>
  (readings.findLast((reading) => reading.kind === 'status') ?? lead)?.inputs ?? [];
