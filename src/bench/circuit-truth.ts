/** The circuit of one input as it really is, faults and all, told by what its pin stands at; computed beforehand, not by the bench. */
export interface CircuitTruth {
  readonly reads: Reads;
  /** Several where a fault comes and goes: the input jumps between them. */
  readonly moments: readonly [Moment, ...Moment[]];
  /** The input whose own contact and plug change what this pin stands at. */
  readonly beside?: string;
  /** The pin is dead and stays so, whatever stands at it. */
  readonly dead?: PinLevel;
}

export type PinLevel = 'H' | 'L';

/**
 * V at the pin, one row for each standing of the own line, in it one number for each standing of the line beside (only one where none
 * matters). null: nothing holds the pin.
 */
export type Moment = readonly (readonly (number | null)[])[];

/** The rows and columns of a moment, in their order: where the plug is, and whether the contact conducts. */
export const standings = [
  'in, closed',
  'in, open',
  'out at switch, closed',
  'out at switch, open',
  'out at controller, closed',
  'out at controller, open',
] as const;
export type Standing = (typeof standings)[number];

/** How a controller turns the volts at its pin into a level. `open`: the level of a line on which nothing flows. */
export type Reads = { readonly open: PinLevel } & (
  | {
      readonly kind: 'threshold';
      /** V at or below which it reads low, at or above which it reads high; between them it stays as it was. */
      readonly falls: number;
      readonly rises: number;
    }
  /** V between which the line is at rest; anything else, a short and a cut too, is told as a trip. */
  | { readonly kind: 'band'; readonly from: number; readonly to: number; readonly rest: PinLevel }
);

/** The level read at so many volts; undefined: as it was before. */
export function levelAt(reads: Reads, volts: number): PinLevel | undefined {
  if (reads.kind === 'band') {
    const within = volts >= reads.from && volts < reads.to;
    return within ? reads.rest : reads.rest === 'H' ? 'L' : 'H';
  }
  if (volts >= reads.rises) return 'H';
  return volts <= reads.falls ? 'L' : undefined;
}
