import type { AxisLetter, InputName } from './machine.ts';
import type { AxisUnit, Between, Way } from './motion-facts.ts';
import type { Mm } from './units.ts';

/** A speed, mm/s or degrees/s without sign, and what rounding leaves of doubt about it. */
export interface SpeedFacts extends Between {
  readonly value: number;
}

export const homingParts = [
  'off the switch',
  'approach',
  'trip',
  'stop',
  'back-off',
  'clear',
  'slow approach',
  'slow trip',
  'release',
  'slow clear',
  'zero set',
] as const;
export type HomingPart = (typeof homingParts)[number];

/** One homing as the stream showed it; what was not seen is absent. Lengths mm or degrees. */
export interface HomingFacts {
  readonly axis: AxisLetter;
  readonly unit: AxisUnit;
  readonly input: InputName;
  /** Homings watched; the figures are those of the last whole one. */
  readonly cycles: number;
  readonly seen: readonly HomingPart[];
  readonly way?: Way | undefined;
  readonly approachSpeed?: SpeedFacts | undefined;
  readonly slowSpeed?: SpeedFacts | undefined;
  /** mm/s² or degrees/s², as the ramps of the approach show it. */
  readonly acceleration?: Between | undefined;
  readonly approachWay?: Between<Mm> | undefined;
  readonly trip?: Between<Mm> | undefined;
  readonly slowTrip?: Between<Mm> | undefined;
  readonly stopDistance?: Between<Mm> | undefined;
  readonly backOff?: Between<Mm> | undefined;
  readonly release?: Between<Mm> | undefined;
  /** Trip to release of the switch. */
  readonly differential?: Between<Mm> | undefined;
  /** What that makes of a right angle where the sides stand a metre apart, degrees. */
  readonly squareness?: Between | undefined;
  /** How far the second side of a beam tripped from the first, as its axis counts. */
  readonly sideOffset?: Between<Mm> | undefined;
  readonly zero: 'jump' | 'agrees' | 'not-seen';
  /** What the numbers shifted by when zero was set: lost steps and the wander of the switch since the last homing. */
  readonly shift?: Between<Mm> | undefined;
  /** What the controller did about the trip. */
  readonly reaction: 'acted' | 'not-acted-on' | 'not-tested';
  /** All axes in the order in which they set off, where several homed together. */
  readonly order?: readonly AxisLetter[] | undefined;
}
