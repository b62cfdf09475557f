import type { Window } from '../../model/procedure.ts';
import { type Abilities, type Jump, jumpsIn } from './jumps.ts';
import { type Run, runsOf } from './runs.ts';
import { type AxisSample, axisTrack } from './track.ts';

/** How one axis moved in a window, as its controller commanded it. */
export interface Motion {
  readonly axis: string;
  readonly samples: readonly AxisSample[];
  readonly jumps: readonly Jump[];
  readonly runs: readonly Run[];
  readonly abilities: Abilities;
}

/** Reads the motion of one axis from a window's reports. */
export function motionOf(window: Window, axis: string, abilities: Abilities): Motion {
  const samples = axisTrack(window, axis);
  return { axis, samples, jumps: jumpsIn(samples, abilities), runs: runsOf(samples, abilities), abilities };
}
