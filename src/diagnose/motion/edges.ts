import type { InputName } from '../../model/machine.ts';
import type { Window } from '../../model/procedure.ts';
import type { EdgeReading, StatusReading } from '../../model/reading.ts';
import type { Millis, Mm } from '../../model/units.ts';
import { type State, stateIn, tellsTheSame } from '../signal/track.ts';
import { exactly, type Interval, spanning } from './interval.ts';
import type { Motion } from './motion.ts';
import { placeAt } from './place.ts';

/** An input that changed while an axis may have been moving: when and where, each only known between two reports. */
export interface InputEdge {
  readonly input: InputName;
  /** Operated: active, or away from its level at rest where the stream reports no active bit. */
  readonly to: 'operated' | 'free';
  /** Controller clock. A controller that stamps edges itself makes this a point. */
  readonly at: Interval<Millis>;
  readonly segment: number;
  /** Host clock of the first report that showed it. */
  readonly arrived: Millis;
  /** All places the axis can have been at; undefined where no position was reported or its frame changed just then. */
  readonly where: Interval<Mm> | undefined;
}

export type Condition = 'operated' | 'free' | 'unknown';

/** What a state means for a switch whose level at rest is known where no active bit is reported. */
export function conditionOf(state: State | undefined, rest: State | undefined): Condition {
  if (!state) return 'unknown';
  if (state.active !== '?') return state.active === '1' ? 'operated' : 'free';
  if (state.level === '?' || !rest || rest.level === '?') return 'unknown';
  return state.level === rest.level ? 'free' : 'operated';
}

/**
 * Every change of one input in a window, placed on the way of one axis. `rest` is the input's state when free, needed only where the
 * stream carries levels alone. A gap is no edge: what happened in it was not seen.
 */
export function inputEdges(
  window: Window,
  input: InputName,
  motion: Motion,
  rest: State | undefined,
): readonly InputEdge[] {
  const edges: InputEdge[] = [];
  let before: StatusReading | undefined = window.lead;
  let stamps: EdgeReading[] = [];
  for (const reading of window.readings) {
    if (reading.kind === 'edge' && reading.input === input) stamps.push(reading);
    if (reading.kind === 'gap') [before, stamps] = [undefined, []];
    if (reading.kind !== 'status') continue;
    if (before && before.segment === reading.segment && tellsTheSame(before, reading)) {
      before = reading;
      stamps = [];
      continue;
    }
    const now = conditionOf(stateIn(reading, input), rest);
    if (now === 'unknown') continue;
    const was = before && conditionOf(stateIn(before, input), rest);
    if (before && before.segment === reading.segment && was !== 'unknown' && was !== now) {
      const when = edgeBetween(before, reading, stamps);
      edges.push({
        input,
        to: now,
        ...when,
        segment: reading.segment,
        where: placeAt(motion, when.at, reading.segment),
      });
    }
    before = reading;
    stamps = [];
  }
  return edges;
}

function edgeBetween(
  before: StatusReading,
  after: StatusReading,
  stamps: readonly EdgeReading[],
): Pick<InputEdge, 'at' | 'arrived'> {
  // The first stamp begins the change; bounce makes more of them.
  const stamp = stamps.find((each) => each.at >= before.at && each.at <= after.at);
  if (stamp) return { at: exactly(stamp.at), arrived: stamp.arrived };
  return { at: spanning(before.at, after.at), arrived: after.arrived };
}
