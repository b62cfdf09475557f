import type { AxisLetter, End } from '../../model/machine.ts';
import type { Mm } from '../../model/units.ts';

/** A condition of the envelope that does not hold: on which axis and side, by how much, and what would mend it. */
export interface EnvelopeIssue {
  readonly kind: EnvelopeIssueKind;
  readonly axis: AxisLetter;
  readonly end?: End;
  /** How far it is from holding, always above zero. */
  readonly by: Mm;
  readonly change?: Change;
  /** Line of the program that goes there. */
  readonly line?: number;
  /** The coordinate system meant. */
  readonly system?: string;
}

/** A number to set; `from` undefined where it is not known. */
export interface Change {
  readonly what:
    | 'soft limit'
    | 'back-off'
    | 'home value'
    | 'rapid speed'
    | 'work offset'
    | 'first retract'
    | 'temporary shift';
  readonly from: number | undefined;
  readonly to: number;
}

export type EnvelopeIssueKind =
  /** The soft limit lies past the switch: the switch trips first, or never. */
  | 'soft-outside-switch'
  /** Inside the switch, but by less than it frees, home wanders, and a millimetre. */
  | 'soft-too-near-switch'
  | 'soft-outside-stop'
  /** Between trip and metal there is less than the stop from rapid takes. */
  | 'little-room-to-stop'
  /** The switch trips past the hard stop: it can never be reached. */
  | 'switch-behind-stop'
  | 'back-off-too-small'
  /** One switch's back-off reaches the other. */
  | 'back-off-too-large'
  /** Where the axis stands after homing is outside its own soft limits. */
  | 'home-outside-soft'
  /** Home value, trip and back-off do not fit together. */
  | 'zero-not-at-home'
  /** The soft range lies on the outer side of home: a sign was lost. */
  | 'soft-wrong-sign'
  | 'soft-wider-than-travel'
  | 'soft-inches-as-mm'
  | 'outside-soft-limits'
  | 'box-too-large'
  | 'first-retract-too-high'
  | 'offset-still-zero'
  | 'offset-inches-as-mm'
  | 'temporary-shift-active'
  | 'other-system-set';
