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
export interface Deed<Name extends string = string> {
  readonly name: Name;
  readonly kind: Kind;
  /** Without walking; common practice, no source. */
  readonly minutes: number;
  /** How often its answer is wrong. */
  readonly mistaken: number;
  /** What a mistake looks like half of the time; left out: all that can be seen alike. */
  readonly slipsTo?: readonly string[];
  readonly applies: (wiring: Wiring) => boolean;
  /** What would be seen with these faults in the input. */
  readonly odds: (scene: Imagined) => Odds;
}
