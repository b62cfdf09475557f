import type { Axis, InputName } from '../../model/machine.ts';
import type { Window } from '../../model/procedure.ts';
import type { StatusReading } from '../../model/reading.ts';
import type { Abilities } from '../motion/jumps.ts';
import { positionQuantum, positionStep } from '../motion/quantum.ts';
import { axisTrack } from '../motion/track.ts';
import { type State, stateIn } from '../signal/track.ts';

/** What an axis can do and how finely its positions are told, as the file and the motion seen so far have it. */
export function abilitiesOf(
  axis: Axis,
  seen: readonly Window[],
): Abilities & { readonly gridKnown: boolean } {
  const tracks = seen.map((window) => axisTrack(window, axis.letter));
  const samples = tracks.length === 1 ? (tracks[0] ?? []) : tracks.flat();
  return {
    step: positionStep(samples, axis.step),
    rapid: axis.rapid,
    acceleration: axis.acceleration,
    gridKnown: axis.step !== undefined || positionQuantum(samples) !== undefined,
  };
}

/** The inputs as they stand while every axis is said to be off its switches; needed only where the stream carries levels alone. */
export function statesAtRest(status: StatusReading | undefined): Readonly<Record<InputName, State>> {
  if (!status) return {};
  return Object.fromEntries(
    status.inputs.flatMap((input) => {
      const state = stateIn(status, input);
      return state ? [[input, state] as const] : [];
    }),
  );
}
