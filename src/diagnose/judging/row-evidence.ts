import type { PlugEnd } from '../../model/ask.ts';
import type { InputName } from '../../model/machine.ts';
import type { Missing, Resolution, Trace } from '../../model/verdict.ts';
import type { Settled } from '../signal/settled.ts';
import type { State } from '../signal/track.ts';
import type { Pressed } from './press-evidence.ts';

/** What one whole row of unplug, control press, replug, press showed, as far as it came. */
export interface RowEvidence {
  readonly at: PlugEnd;
  /** Every input before the plug was pulled, and what it came to with the plug out. */
  readonly inputs: ReadonlyMap<InputName, { readonly rest: State | undefined; readonly out: Settled }>;
  readonly control?: Pressed;
  readonly after?: Pressed;
  /** How often the switch still answered while its plug was said to be out. */
  readonly wrongPlugs: number;
  /** The plug is out, or the stream says it is. */
  readonly stillOut: boolean;
  readonly missing?: Missing;
  /** The controller reported a fault before the plug was touched; one that comes after is the plug's. */
  readonly faultBefore: boolean;
  readonly resolution?: Resolution;
  readonly traces: readonly Trace[];
}

/** A row that never began: its plug hangs out from before. */
export const leftOut = (at: PlugEnd): RowEvidence => ({
  at,
  inputs: new Map(),
  faultBefore: false,
  wrongPlugs: 0,
  stillOut: true,
  missing: 'replug',
  traces: [],
});
