import type { Mm } from '../../model/units.ts';
import { offsetMoved } from '../homing/side-offset.ts';
import { exactly, type Interval, middleOf, overlaps, widened, widthOf } from '../motion/interval.ts';
import { placedCycles } from '../repeatability/places.ts';
import type { Features } from './features.ts';
import { alikeShare, onePlace, tripsForPlace, widestTrip } from './limits.ts';
import { defined, observeRun } from './observe-run.ts';
import type { SeekRoles } from './roles.ts';
import type { SeekRun } from './run.ts';

/** What the person at the machine said, as far as she was asked and sure. */
export interface SeekAnswers {
  /** The tool over the work, on the axis's own arrow. */
  readonly tool?: 'positive' | 'negative' | 'none';
  readonly movedAxis?: 'this' | 'other';
  readonly reached?: 'yes' | 'no';
  readonly standing?: 'past-switch' | 'short-of-it';
  readonly buzzed?: 'yes' | 'no';
  readonly cameBack?: 'yes' | 'no';
  readonly racked?: 'yes' | 'no';
  /** Something stands on the switch right now. */
  readonly touched?: 'yes' | 'no';
  readonly sagged?: 'yes' | 'no';
  readonly measured?: 'true' | 'scaled';
  readonly gauge?: 'steady' | 'wanders';
}

export interface SeekEvidence {
  readonly roles: SeekRoles;
  /** Oldest first. */
  readonly runs: readonly SeekRun[];
  readonly answers: SeekAnswers;
  /** Every home input was seen to answer its own switch. */
  readonly mapProved: boolean;
  /** Another axis set off first that should not have. */
  readonly orderWrong?: boolean;
  /** A stop, a fault, a limit or lost motor power came after the last homing. */
  readonly lostSince?: boolean;
}

/** Everything observed: the last run, what several runs show together, what was proved before, what was said. */
export function observe(evidence: SeekEvidence): Features {
  const { roles, runs, answers, mapProved } = evidence;
  const last = runs.at(-1);
  const alone: Features = last ? observeRun(last, roles) : {};
  const trips = tripsOf(runs);
  const { tool, ...said } = answers;
  return defined<Features>({
    ...alone,
    ...said,
    order: evidence.orderWrong ? 'wrong' : 'right',
    since: evidence.lostSince ? 'stopped-or-lost' : 'nothing',
    map: mapProved ? 'proved' : 'unproved',
    movedAxis: said.movedAxis ?? movedOf(tool),
    tool: toolOf(tool, last),
    trips,
    square: squareOf(runs),
    lengths: lengthsOf(runs),
    bothSides: roles.axis.kind === 'rotary' ? bothSidesOf(runs) : undefined,
    place: placeOf(alone, trips, roles),
  });
}

/** A tool that was seen to go along this axis was moved by it. */
const movedOf = (tool: SeekAnswers['tool']): Features['movedAxis'] =>
  tool === 'positive' || tool === 'negative' ? 'this' : undefined;

function toolOf(said: SeekAnswers['tool'], last: SeekRun | undefined): Features['tool'] {
  if (said === undefined || said === 'none') return said;
  const way = last?.cycle.approach?.direction;
  if (way === undefined) return undefined;
  return (said === 'positive') === (way === 1) ? 'as-commanded' : 'opposite';
}

/** Trip places of all runs in the frame of the first: each zero that was set shifted the numbers after it. */
export const placesInOneFrame = (runs: readonly SeekRun[]): readonly Interval<Mm>[] =>
  placedCycles(runs).map(({ place }) => place);

function tripsOf(runs: readonly SeekRun[]): Features['trips'] {
  const places = placesInOneFrame(runs);
  if (places.length < 2) return undefined;
  const highest = Math.max(...places.map(({ low }) => low));
  const lowest = Math.min(...places.map(({ high }) => high));
  if (highest - lowest > onePlace) return goesOneWay(places) ? 'drifting' : 'scattered';
  if (places.length < tripsForPlace) return undefined;
  const widest = Math.max(...places.map(({ high }) => high)) - Math.min(...places.map(({ low }) => low));
  // Each is only known as well as the reports show it; beyond a millimetre that says too little.
  const doubt = Math.max(...places.map(widthOf));
  return widest <= onePlace + (doubt <= widestTrip ? doubt : 0) ? 'together' : undefined;
}

function goesOneWay(places: readonly Interval<Mm>[]): boolean {
  const signs = places.slice(1).map((place, i) => Math.sign(middleOf(place) - middleOf(places[i] ?? place)));
  return places.length > tripsForPlace && signs.every((sign) => sign !== 0 && sign === signs[0]);
}

/** A homing that squares leaves no offset, one that does not leaves the same again: any other means that one side lost steps. */
function squareOf(runs: readonly SeekRun[]): Features['square'] {
  const offsets = runs.flatMap(({ sideOffset }) => sideOffset ?? []);
  const [before, last] = [offsets.at(-2), offsets.at(-1)];
  if (!before || !last) return undefined;
  const isSquare = overlaps(last, onTheSpot);
  return isSquare || !offsetMoved(before, last) ? 'kept' : 'moved';
}
const onTheSpot = widened(exactly(0), onePlace / 2);

/** Seeks that all ended after the same way, from unlike starts, ended at their own limit. */
function lengthsOf(runs: readonly SeekRun[]): Features['lengths'] {
  const ways = runs.flatMap(({ cycle }) =>
    cycle.approach && !cycle.trip ? [middleOf(cycle.approach.distance)] : [],
  );
  if (ways.length < 2) return undefined;
  const [least, most] = [Math.min(...ways), Math.max(...ways)];
  return most - least <= most * alikeShare ? 'equal' : 'unequal';
}

/** Whether trips fall into two clusters further apart than each is wide. */
function bothSidesOf(runs: readonly SeekRun[]): Features['bothSides'] {
  const middles = placesInOneFrame(runs)
    .map(middleOf)
    .sort((a, b) => a - b);
  if (middles.length < tripsForPlace) return undefined;
  const gaps = middles.slice(1).map((each, i) => each - (middles[i] ?? each));
  const widest = Math.max(...gaps);
  const within = gaps.reduce((sum, gap) => sum + gap, 0) - widest;
  return widest > onePlace && widest > within * 3 ? 'two-places' : 'one-place';
}

/**
 * Where a switch alone on its input, proved by hand and of known side, trips again and again in one place, the tool was really there: the
 * true way of the commanded sign is known without trusting eyes.
 */
function placeOf(
  { trip, way }: Features,
  trips: Features['trips'],
  { placed }: SeekRoles,
): Features['place'] {
  if (!placed || trip !== 'own' || trips !== 'together') return undefined;
  if (way === 'toward') return 'agrees';
  return way === 'away' ? 'contradicts' : undefined;
}
