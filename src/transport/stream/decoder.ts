import type { GapWhy, Line, Reading } from '../../model/reading.ts';
import type { Millis } from '../../model/units.ts';

/** A text as the bytes it was read from. */
export interface RawText {
  readonly bytes: Uint8Array;
  readonly start: number;
  readonly end: number;
}

/** Lines in, readings out, in the order of their arrival; never throws. What a line means may be told by a later one. */
export interface Decoder {
  decode(line: Line): readonly Reading[];
  /** What `decode` gives for an uncut line of these bytes, found sooner; undefined where the line has to go to `decode`. */
  decodeBytes?(arrived: Millis, raw: RawText): readonly Reading[] | undefined;
  /** The port was opened, or went away: what was known of the stream no longer holds. */
  gap(arrived: Millis, why: Extract<GapWhy, 'opened' | 'lost-port'>): readonly Reading[];
  /** A whole valid sentence of this stream was heard since the port was opened. Before that nothing may be written to it. */
  readonly heard: boolean;
  /** The stream's inputs and axes are known. */
  readonly declared: boolean;
}
