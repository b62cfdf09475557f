import type { InputName } from '../../model/machine.ts';
import type { Window } from '../../model/procedure.ts';
import { type Millis, type Mm, mm } from '../../model/units.ts';
import { type Condition, conditionOf, type InputEdge, inputEdges } from '../motion/edges.ts';
import { difference, distanceBetween, exactly, type Interval } from '../motion/interval.ts';
import type { Motion } from '../motion/motion.ts';
import { type State, stateIn } from '../signal/track.ts';
import type { HomingCycle, ZeroSet } from './cycle.ts';
import { legAcceleration } from './leg-acceleration.ts';
import { fallsIn, type Leg, legsOf } from './legs.ts';

export interface HomingOf {
  readonly window: Window;
  readonly motion: Motion;
  readonly input: InputName;
  /** The input's state when free; needed where the stream carries levels alone. */
  readonly rest?: State | undefined;
  readonly homeValue?: Mm | undefined;
}

/**
 * Cuts a window into the parts of a homing: off the switch where it was operated, approach, trip, stop, back-off, clear, slow approach,
 * trip, release, zero set. Edges are given to the way they fell in; nothing is filled in that was not seen.
 */
export function cutHoming({ window, motion, input, rest, homeValue }: HomingOf): HomingCycle {
  const edges = inputEdges(window, input, motion, rest);
  const all = legsOf(motion);
  const setsOff = motion.samples[all[0]?.from ?? -1]?.arrived;
  const start = conditionAtStart(window, input, rest, setsOff);
  const legs = [...all];
  const operated = (leg: Leg | undefined) => edgeIn(edges, 'operated', leg, motion);
  const freedEdge = start === 'operated' ? edgeIn(edges, 'free', legs[0], motion) : undefined;
  const freed = freedEdge && legs.shift();
  const [approach, ...later] = legs;
  const trip = operated(approach);
  const back = later[0] && later[0].direction !== approach?.direction ? later : [];
  const [backOff, slowApproach, release, ...further] = back;
  const clear = edgeAfter(edges, 'free', trip);
  const slowTrip = trip
    ? slowApproach && edgeAfter(edges, 'operated', clear ?? trip)
    : operated(slowApproach);
  const stop = approach?.ends;
  return {
    axis: motion.axis,
    input,
    start: { position: motion.samples[0]?.position, condition: start },
    freed,
    approach,
    trip,
    stop,
    acceleration: approach && legAcceleration(motion, approach),
    stopDistance: trip?.where && stop && wayPast(trip.where, stop, approach),
    backOff,
    clear,
    slowApproach,
    slowTrip,
    release,
    slowClear: edgeAfter(edges, 'free', slowTrip),
    further: back.length > 0 ? further : later,
    zero: zeroOf(motion, homeValue, all),
    endCondition: conditionAtEnd(window, input, rest),
    ends: endOf(window, motion),
  };
}

function edgeIn(edges: readonly InputEdge[], to: InputEdge['to'], leg: Leg | undefined, motion: Motion) {
  return leg && edges.find((edge) => edge.to === to && fallsIn(edge, leg, motion));
}

function edgeAfter(edges: readonly InputEdge[], to: InputEdge['to'], after: InputEdge | undefined) {
  return after && edges.find((edge, i) => edge.to === to && i > edges.indexOf(after));
}

/** How far the axis ran on: the stop never lies before the trip. */
function wayPast(trip: Interval<Mm>, stop: Interval<Mm>, approach: Leg | undefined): Interval<Mm> {
  const outwards = approach?.direction ?? 1;
  const from = outwards === 1 ? trip : { low: mm(-trip.high), high: mm(-trip.low) };
  const to = outwards === 1 ? stop : { low: mm(-stop.high), high: mm(-stop.low) };
  if (to.low >= from.high) return distanceBetween(from, to);
  return { low: mm(Math.max(0, to.low - from.high)), high: mm(Math.max(0, to.high - from.low)) };
}

/** As it set off; an input that changed before that was not worked by it. */
function conditionAtStart(
  window: Window,
  input: InputName,
  rest: State | undefined,
  setsOff: Millis | undefined,
): Condition {
  const statuses = window.readings.filter((reading) => reading.kind === 'status');
  const before = statuses.findLast(({ arrived }) => setsOff !== undefined && arrived <= setsOff);
  const first = before ?? window.lead ?? statuses[0];
  return first ? conditionOf(stateIn(first, input), rest) : 'unknown';
}

function conditionAtEnd(window: Window, input: InputName, rest: State | undefined): Condition {
  const last = window.readings.findLast((reading) => reading.kind === 'status') ?? window.lead;
  return last ? conditionOf(stateIn(last, input), rest) : 'unknown';
}

function zeroOf(
  { samples, jumps, abilities }: Motion,
  homeValue: Mm | undefined,
  legs: readonly Leg[],
): ZeroSet {
  const jump = jumps.findLast(({ before }) => samples[before]?.segment === samples[before + 1]?.segment);
  const to = jump && samples[jump.before + 1]?.position;
  if (jump && to !== undefined) {
    // On its way until then, it may have gone on after the last report of the old frame.
    const ended = legs.find((leg) => leg.to === jump.before)?.ends ?? exactly(mm(to - jump.by));
    return { kind: 'jump', shift: difference(exactly(to), ended), to, after: jump.before };
  }
  const last = samples.at(-1)?.position;
  if (last === undefined || homeValue === undefined) return { kind: 'not-seen' };
  return Math.abs(last - homeValue) <= abilities.step * 1.001
    ? { kind: 'agrees', at: last }
    : { kind: 'not-seen' };
}

function endOf(window: Window, motion: Motion): HomingCycle['ends'] {
  if (window.readings.some((reading) => reading.kind === 'gap')) return 'gap';
  if (motion.samples.at(-1)?.activity === 'fault') return 'fault';
  return motion.runs.at(-1)?.kind === 'moving' ? 'moving' : 'still';
}
