/**
 * What a seek can be told by, each a closed question with few answers. A feature that was not observed is absent: it excludes nothing.
 */
export interface FeatureValues {
  // What the stream shows.
  readonly seen: 'whole' | 'gap';
  readonly atStart: 'free' | 'operated';
  /** Commanded, against the end the switch is said to stand at. */
  readonly way: 'toward' | 'away' | 'none';
  readonly trip: 'own' | 'far-end' | 'other-axis' | 'probe' | 'none' | 'between-reports';
  readonly after: 'reversed' | 'stopped' | 'pushed-on';
  readonly clear: 'cleared' | 'stays-operated';
  readonly slow: 'tripped' | 'missed' | 'not-made';
  readonly edges: 'clean' | 'several';
  readonly zero: 'set' | 'not-set';
  readonly ends: 'still' | 'fault' | 'moving';
  readonly endedBy: 'itself' | 'stop-button';
  readonly speed: 'as-declared' | 'crawl';
  /** The commanded way of a run without a trip, beside the travel of its axis. */
  readonly ran: 'whole-travel' | 'less';
  readonly forWork: 'yes' | 'no';
  readonly order: 'right' | 'wrong';
  readonly elsewhere: 'free' | 'operated-before' | 'operated-after-reversal';
  readonly runOn: 'within-overtravel' | 'beyond-overtravel';
  readonly sides: 'both' | 'one' | 'same-report';
  readonly since: 'nothing' | 'stopped-or-lost';
  // What several runs show.
  readonly trips: 'together' | 'scattered' | 'drifting';
  readonly lengths: 'equal' | 'unequal';
  /** How the two sides of a beam came to their switches after the homing before had squared it. */
  readonly square: 'kept' | 'moved';
  readonly bothSides: 'one-place' | 'two-places';
  // What presses showed before.
  readonly map: 'proved' | 'unproved';
  /** At least three trips in one place of a proved switch that is alone on its input: where the tool really went. */
  readonly place: 'agrees' | 'contradicts';
  // What the person saw, felt or heard.
  /** The tool over the work, against the commanded sign. */
  readonly tool: 'as-commanded' | 'opposite' | 'none';
  readonly movedAxis: 'this' | 'other';
  readonly reached: 'yes' | 'no';
  /** Where it stands after a seek without a trip. */
  readonly standing: 'past-switch' | 'short-of-it';
  readonly buzzed: 'yes' | 'no';
  readonly cameBack: 'yes' | 'no';
  readonly racked: 'yes' | 'no';
  readonly touched: 'yes' | 'no';
  // What a measurement would show.
  readonly measured: 'true' | 'scaled';
  readonly sagged: 'yes' | 'no';
  /** Where a gauge shows the axis, homed again and again. */
  readonly gauge: 'steady' | 'wanders';
}

export type Feature = keyof FeatureValues;
export type Features = { readonly [Name in Feature]?: FeatureValues[Name] };
/** Allowed answers by feature; a feature left out may be anything. */
export type Pattern = { readonly [Name in Feature]?: readonly FeatureValues[Name][] };

/** What it takes to learn a feature. */
export type Means = 'stream' | 'more-runs' | 'presses' | 'eyes' | 'measurement';

export const meansOf = {
  seen: 'stream',
  atStart: 'stream',
  way: 'stream',
  trip: 'stream',
  after: 'stream',
  clear: 'stream',
  slow: 'stream',
  edges: 'stream',
  zero: 'stream',
  ends: 'stream',
  endedBy: 'stream',
  speed: 'stream',
  ran: 'stream',
  forWork: 'stream',
  order: 'stream',
  elsewhere: 'stream',
  runOn: 'measurement',
  sides: 'stream',
  since: 'stream',
  trips: 'more-runs',
  lengths: 'more-runs',
  square: 'more-runs',
  bothSides: 'more-runs',
  map: 'presses',
  place: 'more-runs',
  tool: 'eyes',
  movedAxis: 'eyes',
  reached: 'eyes',
  standing: 'eyes',
  buzzed: 'eyes',
  cameBack: 'eyes',
  racked: 'eyes',
  touched: 'eyes',
  measured: 'measurement',
  sagged: 'measurement',
  gauge: 'measurement',
} as const satisfies Record<Feature, Means>;

export const featureNames = Object.keys(meansOf) as readonly Feature[];

/** Whether what was observed is among what a pattern allows. */
export function fits(features: Features, pattern: Pattern): boolean {
  return featureNames.every((name) => {
    const value: string | undefined = features[name];
    if (value === undefined) return true;
    const allowed: readonly string[] | undefined = pattern[name];
    return allowed === undefined || allowed.includes(value);
  });
}

/** The features in which no answer fits both patterns. */
export function tellsApart(a: Pattern, b: Pattern): readonly Feature[] {
  return featureNames.filter((name) => {
    const [one, other]: (readonly string[] | undefined)[] = [a[name], b[name]];
    return one && other && !one.some((value) => other.includes(value));
  });
}
