import type { DeedName, LookDeed, MeterDeed, WatchedDeed } from './deed-names.ts';

/** An input that holds: its electrical level, what counts as active, or both, as the stream tells it. */
type Level = 'conducting' | 'open';
type Bit = '0' | '1';
export type Held = `${Level} ${Bit}` | Level | Bit;

/** An input that jumps to and fro, in one word. */
export const jumps = 'jumps';
export type Glimpse = Held | typeof jumps;

/** What a push and a letting go look like on the input itself. */
export const still = 'still';
export type Own = typeof still | typeof jumps | `to ${Held}` | `to ${Held}, stays` | `to ${Held}, bounces`;
export const to = (held: Held): Own => `to ${held}`;
export const stays = (held: Held): Own => `to ${held}, stays`;
export const bounces = (held: Held): Own => `to ${held}, bounces`;

/** Which other input answered beside it. */
export type Beside = 'no other' | 'another' | 'other end';
export type Push = Own | `${Own}; ${Exclude<Beside, 'no other'>}`;
export const besides = (own: Own, beside: Beside): Push =>
  beside === 'no other' ? own : `${own}; ${beside}`;

/** The level with the plug out, then with a link in the place of the closed contact. */
export type Linked = `${Glimpse}, linked ${Glimpse}`;
export const outThenLinked = (out: Glimpse, link: Glimpse): Linked => `${out}, linked ${link}`;

export type YesNo = 'yes' | 'no';
export type Lit = 'on' | 'off';
/** Of the press of a neighbouring switch: which input answered. */
export type Neighbouring = 'own' | 'this one' | 'both' | 'third' | 'none' | typeof jumps;
/** Between which limits of its deed a reading falls, counted from below. */
export type Bin = `bin ${0 | 1 | 2 | 3 | 4}`;

/** Something that nobody foresaw. */
export const unforeseen = 'unforeseen';

type Pushing = 'press' | Extract<WatchedDeed, 'tap' | 'carriage'>;

/** What a deed can come to: one text, as it stands in sessions and reports. */
export type OutcomeOf<Name extends DeedName> = Name extends Pushing
  ? Push
  : Name extends `link-${string}`
    ? Linked
    : Name extends LookDeed
      ? YesNo
      : Name extends 'lamp'
        ? Lit
        : Name extends 'neighbour'
          ? Neighbouring
          : Name extends MeterDeed
            ? Bin
            : Glimpse;
export type Outcome = OutcomeOf<DeedName> | typeof unforeseen;
