import type { InputName } from '../../model/machine.ts';
import type { Millis, Mm } from '../../model/units.ts';

/** What must be said at once while an axis seeks: somebody's hand is on the stop. */
export type SeekAlarm = SeekDanger & {
  readonly axis: string;
  /** Host clock of the report that made it certain. */
  readonly arrived: Millis;
  /** Commanded position then. */
  readonly position: Mm;
};

export type SeekDanger =
  /** Commanded away from the end its switch is said to stand at. `past`: how far from rest already. */
  | { readonly kind: 'heads-away'; readonly past: Mm }
  /** The tool is commanded towards the work, whatever the file says of the end. */
  | { readonly kind: 'heads-for-work'; readonly past: Mm }
  /** Another axis's or end's switch answers while this one moves. */
  | { readonly kind: 'wrong-switch'; readonly input: InputName }
  /** Its switch is operated and it goes on the same way. `by`: past the report that made the trip certain. */
  | { readonly kind: 'pushes-on'; readonly input: InputName; readonly by: Mm }
  /** It was commanded back off its switch, which stays operated. */
  | { readonly kind: 'stays-operated'; readonly input: InputName; readonly back: Mm };
