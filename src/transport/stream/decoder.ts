import type { GapWhy, Line, Reading, StatusReading } from '../../model/reading.ts';
import type { Millis } from '../../model/units.ts';
import type { Piece } from './quick-fields.ts';

/** A decoder that is in a hurry. */
export interface Quick {
  /** What `decode` gives for the line from `from` up to its LF, found sooner; undefined where the line has to go to `decode`. */
  status(arrived: Millis, piece: Piece, from: number): StatusReading | undefined;
  /** The same for one who asks no more of a status than that it came and when. The next one is told in the same object. */
  passing(arrived: Millis, piece: Piece, from: number): Passing | undefined;
  /** Where the LF of the line stands that was read last. */
  readonly end: number;
}

/** Of a status that was believed: when it was taken by the controller's clock, in which segment, and how many before it never arrived. */
export type Passing = Pick<StatusReading, 'segment' | 'at' | 'lost'>;

/** Lines in, readings out, in the order of their arrival; never throws. What a line means may be told by a later one. */
export interface Decoder {
  decode(line: Line): readonly Reading[];
  /** For streams of which nearly every line is a status of one shape. */
  readonly quick?: Quick;
  /** The port was opened, or went away: what was known of the stream no longer holds. */
  gap(arrived: Millis, why: Extract<GapWhy, 'opened' | 'lost-port'>): readonly Reading[];
  /** The last status as it came, where `decode` waits for a second one to agree before it tells it. */
  readonly latest?: StatusReading | undefined;
  /** A whole valid sentence of this stream was heard since the port was opened. Before that nothing may be written to it. */
  readonly heard: boolean;
  /** The stream's inputs and axes are known. */
  readonly declared: boolean;
}
