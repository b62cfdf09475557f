import type { AxisLetter, End } from './machine.ts';
import type { ScaleCause } from './scale-facts.ts';
import type { Mm } from './units.ts';

/** What exactly does not hold of an axis's limits, offsets or parts. */
export const limitIssues = [
  /** The soft limit lies past the switch: the switch trips first, or never. */
  'soft-outside-switch',
  /** Inside the switch, but by less than it frees, home wanders, and a millimetre. */
  'soft-too-near-switch',
  'soft-outside-stop',
  /** Between trip and metal there is less than the stop from rapid takes. */
  'little-room-to-stop',
  /** The switch trips past the hard stop: it can never be reached. */
  'switch-behind-stop',
  'back-off-too-small',
  /** One switch's back-off reaches the other. */
  'back-off-too-large',
  /** Where the axis stands after homing is outside its own soft limits. */
  'home-outside-soft',
  /** Home value, trip and back-off do not fit together. */
  'zero-not-at-home',
  /** The soft range lies on the outer side of home: a sign was lost. */
  'soft-wrong-sign',
  'soft-wider-than-travel',
  'soft-inches-as-mm',
  'outside-soft-limits',
  'box-too-large',
  'first-retract-too-high',
  'offset-still-zero',
  'offset-inches-as-mm',
  'temporary-shift-active',
  'other-system-set',
] as const;
export type LimitIssue = (typeof limitIssues)[number];

/** Numbers that a person can set. */
export const limitSettings = [
  'soft limit',
  'back-off',
  'home value',
  'rapid speed',
  'work offset',
  'first retract',
  'temporary shift',
] as const;
export type LimitSetting = (typeof limitSettings)[number];

/** A number to set; `from` undefined where it is not known. */
export interface LimitChange {
  readonly what: LimitSetting;
  readonly from: number | undefined;
  readonly to: number;
}

/** A condition of the envelope that does not hold: on which axis and side, by how much, and what would mend it. */
export interface LimitFact {
  readonly axis: AxisLetter;
  readonly issue: LimitIssue;
  readonly end?: End | undefined;
  /** How far it is from holding, mm or degrees, always above zero. */
  readonly by: Mm;
  readonly change?: LimitChange | undefined;
  /** Line of the program that goes there. */
  readonly line?: number | undefined;
  /** The coordinate system meant (RS-274). */
  readonly system?: string | undefined;
}

export const limitKinds = [
  'soft-limits-outside',
  'soft-limits-mistyped',
  'little-room-to-stop',
  'switch-behind-stop',
  'back-off-unfit',
  'home-outside-soft',
  'zero-not-at-home',
  'outside-soft-limits',
  'work-offset-doubtful',
] as const;
export type LimitKind = (typeof limitKinds)[number];
export type LimitFinding = { readonly [Kind in LimitKind]: LimitFact & { readonly kind: Kind } }[LimitKind];

/** Which finding an issue is told as. */
export const limitKindOf = {
  'soft-outside-switch': 'soft-limits-outside',
  'soft-too-near-switch': 'soft-limits-outside',
  'soft-outside-stop': 'soft-limits-outside',
  'little-room-to-stop': 'little-room-to-stop',
  'switch-behind-stop': 'switch-behind-stop',
  'back-off-too-small': 'back-off-unfit',
  'back-off-too-large': 'back-off-unfit',
  'home-outside-soft': 'home-outside-soft',
  'zero-not-at-home': 'zero-not-at-home',
  'soft-wrong-sign': 'soft-limits-mistyped',
  'soft-wider-than-travel': 'soft-limits-mistyped',
  'soft-inches-as-mm': 'soft-limits-mistyped',
  'outside-soft-limits': 'outside-soft-limits',
  'box-too-large': 'outside-soft-limits',
  'first-retract-too-high': 'outside-soft-limits',
  'offset-still-zero': 'work-offset-doubtful',
  'offset-inches-as-mm': 'work-offset-doubtful',
  'temporary-shift-active': 'work-offset-doubtful',
  'other-system-set': 'work-offset-doubtful',
} as const satisfies Record<LimitIssue, LimitKind>;

/** Lengths that come out otherwise than commanded. */
export type ScaleFinding =
  | {
      readonly kind: 'scale-off';
      readonly axis: AxisLetter;
      /** Measured over commanded. */
      readonly ratio: number;
      /** The likeliest whole-number mistake, where one fits. */
      readonly cause?: ScaleCause | undefined;
      /** Steps per unit as set, and as they should be. */
      readonly steps?: number | undefined;
      readonly corrected?: number | undefined;
    }
  | { readonly kind: 'backlash'; readonly axis: AxisLetter; readonly by: Mm }
  /** The two ways differ: something slips or steps are lost. */
  | {
      readonly kind: 'ways-differ';
      readonly axis: AxisLetter;
      readonly positive: number;
      readonly negative: number;
    };
