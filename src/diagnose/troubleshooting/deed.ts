import type { DeedName } from '../../model/deed-names.ts';
import type { Outcome, OutcomeOf } from '../../model/outcomes.ts';
import type { Wiring } from '../circuit/wiring.ts';
import type { Imagined } from './imagined.ts';
import type { Odds } from './odds.ts';

/**
 * In the order they are used: hands and eyes with the motors off, then a meter with the motors off, then whatever needs the drives.
 * A later kind is only used where no earlier one tells anything more.
 */
export const kinds = ['hands', 'meter', 'energised'] as const;
export type Kind = (typeof kinds)[number];

/** Something a person can do or look at to learn what is the matter. */
export interface Deed {
  readonly name: DeedName;
  readonly kind: Kind;
  /** Without walking; common practice, no source. */
  readonly minutes: number;
  /** How often its answer is wrong. */
  readonly mistaken: number;
  /** What a mistake looks like half of the time; left out: all that can be seen alike. */
  readonly slipsTo?: readonly Outcome[];
  readonly applies: (wiring: Wiring) => boolean;
  /** What would be seen with these faults in the input. */
  readonly odds: (scene: Imagined) => { readonly [outcome: string]: number | undefined };
}

/** The same, with what it alone can come to. */
export interface DeedOf<Name extends DeedName> extends Deed {
  readonly name: Name;
  readonly odds: (scene: Imagined) => Odds<OutcomeOf<Name>>;
}
export type AnyDeed = { readonly [Name in DeedName]: DeedOf<Name> }[DeedName];
