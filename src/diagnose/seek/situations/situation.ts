import type { SituationName } from '../../../model/seek-situations.ts';
import type { Pattern } from '../features.ts';
import type { SeekRoles } from '../roles.ts';

export type { SituationName };

/** The findings a situation may come to. */
export type SeekFindingKind =
  | 'heads-away'
  | 'mirrored'
  | 'wrong-switch'
  | 'pressed-at-start'
  | 'zeroed-in-place'
  | 'zero-not-set'
  | 'no-reversal'
  | 'does-not-clear'
  | 'no-trip'
  | 'inferred-trip'
  | 'scattered-trips'
  | 'overruns'
  | 'reference-lost'
  | 'scale-off'
  | 'heads-for-work'
  | 'axis-order'
  | 'crawls'
  | 'blocked-elsewhere'
  | 'gantry';

export interface Situation {
  readonly name: SituationName;
  readonly pattern: Pattern;
  /** What its stream comes to where nothing better is known. */
  readonly finding: SeekFindingKind | undefined;
  /** On which machines it can happen at all. */
  readonly applies: (roles: SeekRoles) => boolean;
}

export const anywhere = (): boolean => true;
export const onGantry = ({ axis }: SeekRoles): boolean => axis.motors > 1;
export const onSpindleAxis = ({ axis }: SeekRoles): boolean => axis.letter === 'Z';

/** Where a situation does not say otherwise, it was seen from end to end. */
export const usual = { seen: ['whole'] } as const satisfies Pattern;

/** A homing that goes through from end to end. */
export const wholeCycle = {
  atStart: ['free'],
  trip: ['own'],
  after: ['reversed'],
  clear: ['cleared'],
  slow: ['tripped', 'not-made'],
  zero: ['set'],
  ends: ['still'],
  // Only a beam has two, and each must have answered.
  sides: ['both', 'same-report'],
  square: ['kept'],
  forWork: ['no'],
  // Another axis may well be parked on its switch.
  elsewhere: ['free', 'operated-before'],
  runOn: ['within-overtravel'],
  speed: ['as-declared'],
  order: ['right'],
  since: ['nothing'],
} as const satisfies Pattern;

/** What may be wrong besides and must not hide what is worse. */
export const whateverElse = {
  speed: ['as-declared', 'crawl'],
  order: ['right', 'wrong'],
  since: ['nothing', 'stopped-or-lost'],
  runOn: ['within-overtravel', 'beyond-overtravel'],
} as const satisfies Pattern;

/** A run to its end without its switch. */
export const noTrip = {
  atStart: ['free'],
  trip: ['none'],
  zero: ['not-set'],
} as const satisfies Pattern;
