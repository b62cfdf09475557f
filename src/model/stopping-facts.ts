import type { AxisLetter } from './machine.ts';
import type { AxisUnit, Between } from './motion-facts.ts';
import type { Mm } from './units.ts';

/** What an axis needs from the trip of its switch to a standstill, against the room there is. Lengths mm or degrees. */
export interface StoppingFacts {
  readonly axis: AxisLetter;
  readonly unit: AxisUnit;
  /** mm/s. */
  readonly speed?: number | undefined;
  /** mm/s². */
  readonly acceleration?: number | undefined;
  /** ms. */
  readonly reaction?: number | undefined;
  /** v·t + v²/2a. */
  readonly computed?: Mm | undefined;
  /** The widest certain way seen, of so many stops. */
  readonly observed?: Between<Mm> | undefined;
  readonly stops: number;
  /** The stop seen cannot have been made with the numbers declared. */
  readonly worseThanDeclared: boolean;
  readonly overtravel?: Mm | undefined;
  readonly toHardStop?: Mm | undefined;
  /** What may be used of it, and which of the two bounds it. */
  readonly room?: { readonly mm: Mm; readonly from: 'overtravel' | 'hard stop' } | undefined;
  readonly says: 'fits' | 'overruns' | 'unknown';
  readonly over?: Mm | undefined;
  /** The highest approach speed that stops within the room, mm/s. */
  readonly fastest?: number | undefined;
  /** What half the present speed needs. */
  readonly halved?: Mm | undefined;
}
