import { type Mm, mm } from '../../model/units.ts';
import { type Interval, middleOf, widthOf } from '../motion/interval.ts';
import { c4, deviationInterval, meanInterval } from './confidence.ts';
import { repeatabilityDefinition, unidirectional } from './iso230.ts';
import { type Drift, dependenceOf, driftOf, type Outlier, outlierOf } from './oddities.ts';
import { type SampleFigures, sampleFigures } from './sample.ts';

/** One homing's trip place in a frame common to all, and what a gauge showed, if one was read. */
export interface Trip {
  readonly place: Interval<Mm>;
  readonly gauge?: Mm | undefined;
  /** Where it started from; unlike starts show that the place does not depend on it. */
  readonly start?: Mm | undefined;
}

export interface Repeatability {
  readonly source: 'commanded' | 'measured';
  readonly figures: SampleFigures;
  /** 4·s; `definition` says whose. */
  readonly unidirectional: Mm;
  readonly definition: typeof repeatabilityDefinition;
  /** s/c4, undefined under two runs. */
  readonly unbiased: number | undefined;
  /** Where the true mean lies, 95 %; undefined under two runs. */
  readonly mean95: Interval | undefined;
  /** How each run goes with the one before it, where that is no chance. */
  readonly lagOne: number | undefined;
  /** Where the true standard deviation lies, 95 %; undefined under two runs. */
  readonly deviation95: Interval | undefined;
  readonly outlier: Outlier | undefined;
  readonly drift: Drift | undefined;
  readonly startPoints: number;
  /** What the stream's period and the position step could tell apart at all, mm: the widest trip place. 0 for a gauge. */
  readonly blur: Mm;
  readonly says: RepeatSays;
  /** The count came to its trips at places certainly further apart than allowed, mm, though the gauge shows the axis in one: steps were lost. */
  readonly countWanders: Mm | undefined;
}

/** `tolerance` met, broken, or not to be told from this stream: its own blur is wider. */
export type RepeatSays = 'within' | 'beyond' | 'too-coarse' | 'too-few';

/** Fewer runs than this say nothing about repeating. */
export const fewestRuns = 3;

/**
 * Judges how well an axis comes back to its switch. Gauge readings, where all were taken, make it `measured`. `tolerance` is the accepted span, mm. Places as intervals:
 * the span is certainly broken where even the nearest ends lie further apart, certainly kept where even the furthest do not.
 */
export function judgeRepeatability(trips: readonly Trip[], tolerance: Mm): Repeatability | undefined {
  if (trips.length === 0) return undefined;
  const gauges = trips.flatMap(({ gauge }) => gauge ?? []);
  const measured = gauges.length === trips.length;
  const places: readonly Interval[] = measured
    ? gauges.map((gauge) => ({ low: gauge, high: gauge }))
    : trips.map(({ place }) => place);
  const values = places.map(middleOf);
  const figures = sampleFigures(values);
  return {
    source: measured ? 'measured' : 'commanded',
    figures,
    unidirectional: mm(unidirectional(figures)),
    definition: repeatabilityDefinition,
    ...spreadOf(figures),
    lagOne: dependenceOf(values),
    outlier: outlierOf(values),
    drift: driftOf(values),
    startPoints: new Set(trips.flatMap(({ start }) => (start === undefined ? [] : Math.round(start)))).size,
    blur: mm(Math.max(...places.map(widthOf))),
    says: saysOf(places, tolerance),
    countWanders: measured ? wandering(trips, tolerance) : undefined,
  };
}

const spreadOf = ({
  n,
  mean,
  s,
}: SampleFigures): Pick<Repeatability, 'unbiased' | 'mean95' | 'deviation95'> =>
  n < 2
    ? { unbiased: undefined, mean95: undefined, deviation95: undefined }
    : { unbiased: s / c4(n), mean95: meanInterval(mean, s, n), deviation95: deviationInterval(s, n) };

function wandering(trips: readonly Trip[], tolerance: Mm): Mm | undefined {
  const apart = surelyApart(trips.map(({ place }) => place));
  return apart > tolerance ? mm(apart) : undefined;
}

const surelyApart = (places: readonly Interval[]): number =>
  Math.max(...places.map(({ low }) => low)) - Math.min(...places.map(({ high }) => high));

function saysOf(places: readonly Interval[], tolerance: Mm): RepeatSays {
  if (places.length < fewestRuns) return 'too-few';
  if (surelyApart(places) > tolerance) return 'beyond';
  const atMost = Math.max(...places.map(({ high }) => high)) - Math.min(...places.map(({ low }) => low));
  return atMost <= tolerance ? 'within' : 'too-coarse';
}

/** The slowest report period, ms, from which a tolerance can be told at all: half of it for the blur. Infinity at rest. */
export const periodFor = (tolerance: Mm, speed: number, step: Mm): number =>
  Math.max(0, ((tolerance / 2 - step) / Math.abs(speed)) * 1000);
