import type { CheckName } from './check-name.ts';
import type { DeedName } from './deed-names.ts';
import type { FaultName } from './fault-names.ts';
import type { InputName } from './machine.ts';
import type { Missing } from './missing.ts';
import type { Outcome } from './outcomes.ts';
import type { Share } from './units.ts';
import type { WiringName } from './wiring-names.ts';

/** What the stream tells of an input: its electrical level, what counts as active, or both. */
export const tellings = ['both', 'levels', 'active'] as const;
export type Told = (typeof tellings)[number];

/** What a search for the cause on one input came to, and what it rests on. */
export interface CauseFacts {
  /** What no test that was left could tell apart, the likeliest first. Several names: these faults at once; none: nothing wrong on the input itself. */
  readonly causes: readonly (readonly FaultName[])[];
  /** The other input that such a cause concerns, as far as presses have shown which. */
  readonly beside?: InputName;
  /** How much of the belief they hold together. */
  readonly share: Share;
  /** One of them alone is left, or the search came to its end with several. `stopped`: it was broken off. */
  readonly ended: 'named' | 'inseparable' | 'stopped';
  /** The wirings that were thought of, and what of them nobody declared. */
  readonly wirings: readonly {
    readonly name: WiringName;
    readonly contact: 'normally open' | 'normally closed';
  }[];
  readonly assumed: readonly ('circuit' | 'contact')[];
  readonly history: 'fresh' | 'worked';
  /** Left out by versions that did not know it. */
  readonly told?: Told;
  readonly evidence: readonly CauseEvidence[];
  readonly notDone: readonly { readonly deed: DeedName; readonly why: Missing }[];
  /** Faults that were likely before and are not any more. */
  readonly ruledOut: readonly FaultName[];
  /** What shows that the fix has worked. */
  readonly retest: readonly CheckName[];
}

export interface CauseEvidence {
  readonly deed: DeedName;
  readonly outcome: Outcome;
  /** Of a meter, in V, ohm or A; absent: over range, or no meter. */
  readonly value?: number;
  readonly speaks: 'for' | 'against' | 'neither';
  /** Taken over from an earlier session. */
  readonly earlier?: true;
}

/** What is found of an input before anything is asked, and how the search is to be led. */
export interface SearchOrder {
  readonly subject: string;
  /** `fresh`: newly built, never proved. `worked`: it did its duty before. */
  readonly history: 'fresh' | 'worked';
  /** An earlier session proved the stop. */
  readonly stopProved: boolean;
  readonly earlier: readonly { readonly deed: DeedName; readonly outcome: Outcome }[];
  /** What the earlier stream told of the input; left out where there was none, or where it showed nothing. */
  readonly told?: Told;
  /** The other input that answered in its place or beside it, in an earlier session. */
  readonly beside?: InputName;
}
