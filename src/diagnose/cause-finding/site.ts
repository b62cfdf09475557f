import type { Told } from '../../model/cause-facts.ts';
import type { InputName, Switch } from '../../model/machine.ts';
import type { Held, Outcome } from '../../model/outcomes.ts';
import type { Scene } from '../../model/procedure.ts';
import type { Missing } from '../../model/verdict.ts';
import type { Wiring } from '../circuit/wiring.ts';
import type { Asking, Latest } from '../procedures/asking.ts';
import type { State } from '../signal/track.ts';
import { glimpseOf } from '../troubleshooting/glimpse.ts';

/** Where a search is at work, and what it has seen on the way that later deeds need. */
export interface Site {
  readonly of: Switch;
  readonly scene: Scene;
  readonly latest: Latest;
  readonly told: Told;
  /** A pulse this long is sure to meet a report of this stream, ms; infinite where that is not known. */
  readonly surePulse: number;
  wiring: Wiring;
  /** Inputs that change by themselves. */
  deaf: readonly InputName[];
  /** It is known to answer a press, so that a press with the plug out shows whether the right one is out. */
  answers: boolean;
  /** Another input that answered in its place or beside it. */
  beside: InputName | undefined;
  /** The person said that this is a signal plug of low voltage, or would not. */
  plugConfirmed: boolean | undefined;
  motorsOn: boolean;
}

/** What doing a deed came to. */
export type Done<Seen extends Outcome = Outcome> =
  | { readonly outcome: Seen; readonly value?: number }
  | NotDone;

export interface NotDone {
  readonly missing: Missing;
  /** All deeds of this kind are out with it: no meter here, no power to be had. */
  readonly kind?: 'meter' | 'energised';
  /** Something is out and was not put back: the search ends. */
  readonly ends?: true;
}

/** A deed as asks; it comes to nothing but what its odds are known for. */
export type Doing<Seen extends Outcome> = (site: Site) => Asking<Done<Seen>>;

/** Which halves of an input's state a stream tells. */
export const toldBy = ({ level, active }: State): Told =>
  level === '?' ? 'active' : active === '?' ? 'levels' : 'both';

/** The level of a line that conducts. */
export function conductingLevel({ template, values, family }: Wiring): 'H' | 'L' {
  const limits = template.limits((name) => values[name]?.nominal ?? Number.NaN, family);
  return limits.kind === 'window' || limits.lowMeans === 'conducting' ? 'L' : 'H';
}

/** A state in the words of the search; undefined where half of it is not told. */
export function glimpsed(state: State, { told, wiring }: Pick<Site, 'told' | 'wiring'>): Held | undefined {
  if (told !== 'active' && state.level === '?') return undefined;
  if (told !== 'levels' && state.active === '?') return undefined;
  return glimpseOf(state.level === conductingLevel(wiring), state.active === '1', told);
}
