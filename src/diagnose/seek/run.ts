import type { InputName } from '../../model/machine.ts';
import type { Window } from '../../model/procedure.ts';
import type { Mm } from '../../model/units.ts';
import { cutHoming } from '../homing/cut.ts';
import type { HomingCycle } from '../homing/cycle.ts';
import { type InputEdge, inputEdges } from '../motion/edges.ts';
import type { Interval } from '../motion/interval.ts';
import type { Abilities } from '../motion/jumps.ts';
import { type Motion, motionOf } from '../motion/motion.ts';
import type { State } from '../signal/track.ts';
import type { SeekRoles } from './roles.ts';

/** One seek or homing of one axis, read from its window. */
export interface SeekRun {
  readonly window: Window;
  readonly motion: Motion;
  /** Inputs' states when free, where the stream carries levels alone. */
  readonly rest: Readonly<Record<InputName, State>>;
  /** Cut by the home input that answered first. */
  readonly cycle: HomingCycle;
  /** First trips of every home input, for an axis with two motors. */
  readonly homeTrips: readonly { readonly input: InputName; readonly trip: InputEdge | undefined }[];
  /** Every other watched input that became operated in the window. */
  readonly strayTrips: readonly InputEdge[];
  /** Where the trip that counts was: the slow one where there was one. In the frame before the zero was set. */
  readonly place: Interval<Mm> | undefined;
}

export interface RunOf {
  readonly window: Window;
  readonly roles: SeekRoles;
  readonly abilities: Abilities;
  /** Inputs' states when free, where the stream carries levels alone. */
  readonly rest: Readonly<Record<InputName, State>>;
}

export function seekRun({ window, roles, abilities, rest }: RunOf): SeekRun {
  const motion = motionOf(window, roles.axis.letter, abilities);
  const edgesOf = (input: InputName) => inputEdges(window, input, motion, rest[input]);
  const homeTrips = roles.home.map((input) => ({
    input,
    trip: edgesOf(input).find(({ to }) => to === 'operated'),
  }));
  const first = homeTrips.reduce<(typeof homeTrips)[number] | undefined>(
    (best, each) => ((each.trip?.at.high ?? Infinity) < (best?.trip?.at.high ?? Infinity) ? each : best),
    undefined,
  );
  const input = first?.input ?? roles.home[0] ?? '';
  const cycle = cutHoming({ window, motion, input, rest: rest[input], homeValue: roles.axis.homeValue });
  const strays = [...roles.farEnd, ...roles.otherAxes, ...roles.probes, ...roles.stops];
  return {
    window,
    motion,
    rest,
    cycle,
    homeTrips,
    strayTrips: strays.flatMap((each) => edgesOf(each).filter(({ to }) => to === 'operated')),
    place: (cycle.slowTrip ?? cycle.trip)?.where,
  };
}
