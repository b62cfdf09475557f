import type { InputName } from '../../model/machine.ts';
import type { Window } from '../../model/procedure.ts';
import type { Mm } from '../../model/units.ts';
import { cutHoming } from '../homing/cut.ts';
import type { HomingCycle } from '../homing/cycle.ts';
import { legsOf } from '../homing/legs.ts';
import { sideOffset } from '../homing/side-offset.ts';
import { type InputEdge, inputEdges } from '../motion/edges.ts';
import type { Interval } from '../motion/interval.ts';
import type { Abilities } from '../motion/jumps.ts';
import { type Motion, motionOf } from '../motion/motion.ts';
import type { State } from '../signal/track.ts';
import { shortestTrip } from './limits.ts';
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
  /** How far the second side of a beam tripped from the first, as its axis counts; both at the slow approach where there was one. */
  readonly sideOffset: Interval<Mm> | undefined;
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
  const cutBy = (by: InputName) =>
    cutHoming({ window, motion, input: by, rest: rest[by], homeValue: roles.axis.homeValue });
  const cycle = cutBy(input);
  const sides = roles.home.length > 1 ? roles.home.map((each) => decisive(cutBy(each))) : [];
  const strays = [...roles.farEnd, ...roles.otherAxes, ...roles.probes, ...roles.stops];
  return {
    window,
    motion,
    rest,
    cycle,
    homeTrips,
    strayTrips: strays.flatMap((each) =>
      held(each, edgesOf(each), roles).filter((edge) => !isWorkedByOther(edge, { window, roles, abilities })),
    ),
    sideOffset: sideOffset(sides[0], sides[1]),
    place: (lastOf(sides) ?? decisive(cycle))?.where,
  };
}

/** The trip that a zero hangs on: the slow one where there was one. */
const decisive = ({ slowTrip, trip }: HomingCycle): InputEdge | undefined => slowTrip ?? trip;

/** A beam is home where its last side is; undefined where one of them was not seen. */
function lastOf(sides: readonly (InputEdge | undefined)[]): InputEdge | undefined {
  const seen = sides.flatMap((each) => each ?? []);
  return seen.length < sides.length ? undefined : seen.toSorted((a, b) => b.at.high - a.at.high)[0];
}

/** Trips that lasted: what let go of a switch again at once was noise. A probe is left as soon as it is touched. */
const held = (input: InputName, edges: readonly InputEdge[], { probes }: SeekRoles): readonly InputEdge[] =>
  edges.filter((edge, i) => {
    const freed = edges[i + 1];
    return (
      edge.to === 'operated' &&
      !(!probes.includes(input) && freed && freed.at.high - edge.at.low < shortestTrip)
    );
  });

/** Whether an edge is of an axis that was on its way itself: where several home at the same time, each comes to its own switch. */
function isWorkedByOther(
  { input, at }: InputEdge,
  { window, roles, abilities }: Pick<RunOf, 'window' | 'roles' | 'abilities'>,
): boolean {
  const axis = roles.worksOther[input];
  return (
    axis !== undefined &&
    legsOf(motionOf(window, axis, abilities)).some((leg) => at.high >= leg.at.low && at.low <= leg.at.high)
  );
}
