import type { Axis, AxisLetter, End } from '../../model/machine.ts';
import { type Mm, mm } from '../../model/units.ts';
import { stoppingDistance } from '../stopping/distance.ts';

/** One end of an axis, in machine coordinates; what is not known is undefined. */
export interface EndLayout {
  /** Where it meets solid metal. */
  readonly stop?: Mm | undefined;
  /** Where its switch trips; undefined where there is none. */
  readonly trip?: Mm | undefined;
}

/** Everything that bounds one axis, in one frame. Lengths mm, or degrees on a rotary axis. */
export interface AxisLayout {
  readonly letter: AxisLetter;
  readonly homes: End | undefined;
  readonly homeValue: Mm | undefined;
  readonly backOff: Mm | undefined;
  readonly soft: readonly [Mm, Mm] | undefined;
  readonly travel: Mm | undefined;
  readonly ends: Readonly<Record<End, EndLayout>>;
  /** Way from trip to rest at the rapid speed. */
  readonly stopAtRapid: Mm | undefined;
  /** Way between trip and release of the home switch. */
  readonly differential: Mm | undefined;
  /** How well it comes home, as a span. */
  readonly homeSpan: Mm | undefined;
}

export const ends = ['negative', 'positive'] as const satisfies readonly End[];
export const outwards = (end: End): 1 | -1 => (end === 'positive' ? 1 : -1);
export const inwards = (end: End): 1 | -1 => (end === 'positive' ? -1 : 1);

/** What was observed of an axis beside its file: hard stops by hand or tape, trips and differential from the homings. */
export interface Observed {
  readonly stops?: Readonly<Partial<Record<End, Mm>>>;
  readonly trips?: Readonly<Partial<Record<End, Mm>>>;
  readonly differential?: Mm;
  readonly homeSpan?: Mm;
}

/** The layout of an axis as its file tells it, corrected by what was observed: `hard` is where the switches trip. */
export function layoutOf(axis: Axis, observed: Observed = {}): AxisLayout {
  const { stops = {}, trips = {} } = observed;
  const { acceleration, rapid, reaction } = axis;
  return {
    letter: axis.letter,
    homes: axis.homes,
    homeValue: axis.homeValue,
    backOff: axis.backOff,
    soft: axis.soft,
    travel: axis.travel,
    ends: {
      negative: { stop: stops.negative, trip: trips.negative ?? axis.hard?.[0] },
      positive: { stop: stops.positive, trip: trips.positive ?? axis.hard?.[1] },
    },
    stopAtRapid:
      acceleration !== undefined && rapid !== undefined && reaction !== undefined
        ? stoppingDistance({ speed: rapid / 60, acceleration, reaction })
        : undefined,
    differential: observed.differential,
    homeSpan: observed.homeSpan,
  };
}

/** Common practice, no source: contact switches free within a millimetre, and home repeats within a tenth. */
const assumed = { differential: 1, homeSpan: 0.1 };
/** Added to what is certain, mm (common practice, no source). */
const spare = { soft: 1, backOff: 0.5, metal: 1 };

/** How far inside its switch a soft limit must lie, mm: past where the switch frees again, what home wanders, and one more. */
export const softMargin = ({ differential, homeSpan }: AxisLayout): Mm =>
  mm((differential ?? assumed.differential) + (homeSpan ?? assumed.homeSpan) + spare.soft);

/** How far an axis must back off to be sure off its switch, mm. */
export const backOffNeeded = ({ differential }: AxisLayout): Mm =>
  mm((differential ?? assumed.differential) + spare.backOff);

/** What must lie between a trip and solid metal, mm; undefined where the stop from rapid is not known. */
export const roomNeeded = ({ stopAtRapid }: AxisLayout): Mm | undefined =>
  stopAtRapid === undefined ? undefined : mm(stopAtRapid + spare.metal);

/** What is left to work in between the margins of both switches, mm; undefined where an end is not known. */
export function usableTravel(layout: AxisLayout): Mm | undefined {
  const { negative, positive } = layout.ends;
  if (negative.trip === undefined || positive.trip === undefined) return undefined;
  return mm(positive.trip - negative.trip - 2 * softMargin(layout));
}
