import type { GapWhy, Line, Reading, StatusReading } from '../../model/reading.ts';
import type { Millis } from '../../model/units.ts';
import type { Piece } from './quick-fields.ts';

/** A decoder that is in a hurry. */
export interface Quick {
  /** What `decode` gives for the line from `from` up to its LF, found sooner; undefined where the line has to go to `decode`. */
  status(arrived: Millis, piece: Piece, from: number): StatusReading | undefined;
  /** Nobody asks more of a status like the one that was read last, from `from` on, than that it came and when: `run` may take those behind it. */
  learn(piece: Piece, from: number): void;
  /**
   * Takes the line that begins at `line`, and each behind it up to `end`, as long as it is a status in the shape that was learned.
   * Undefined where the first is none, or has to go to `decode`.
   */
  run(head: Head, piece: Piece, line: number, end: number, paces: Uint32Array): Run | undefined;
  /** Where the LF of the line stands that was read last. */
  readonly end: number;
}

/** Reads what stands before the text of a line, where it is of the usual form. */
export interface Head {
  /** When the line arrived that was read last. */
  readonly at: Millis;
  /** Where the text of the line begins; -1 where this is not how it begins. */
  read(piece: Piece, line: number): number;
}

/** Statuses that were believed, one behind the other: what is told of the first, and of those that followed with none lost between them. */
export interface Run extends Pick<StatusReading, 'segment' | 'at' | 'lost'> {
  /** How many followed. How far each lay behind the one before, by the controller's clock in ms, was counted in `paces`. */
  readonly further: number;
  /** When the last of all was taken, by the controller's clock, and when it arrived. */
  readonly lastAt: Millis;
  readonly arrived: Millis;
}

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
