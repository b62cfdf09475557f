import { type Millis, ms } from '../../model/units.ts';
import type { Head } from './decoder.ts';
import type { Piece } from './quick-fields.ts';
import type { QuickShape } from './quick-shape.ts';
import type { Counted, Steps } from './steps.ts';

/** Paces are counted up to this one; a longer one ends a run. ms. */
export const longestPace = 2000;

/**
 * Takes statuses of one shape, one line behind the other, while nothing is asked of them but that they came and when. Only the first
 * is put to the clock; each behind it has the sequence that is next, arrived no sooner than the one before, and lies no further behind
 * it than `longestPace`, which the clock would believe whatever had been before.
 */
export class QuickRun {
  /** Of the first: when it was taken by the controller's clock, and how many before it never arrived. */
  at: Millis = ms(0);
  lost = 0;
  /** How many followed. */
  further = 0;
  /** When the last arrived, and where its LF stands. */
  arrived: Millis = ms(0);
  end = 0;
  private readonly shape: QuickShape;
  private readonly clock: Steps;

  constructor(shape: QuickShape, clock: Steps) {
    this.shape = shape;
    this.clock = clock;
  }

  /** From `line` up to `end`; false where the first line is none of these. */
  take(head: Head, piece: Piece, line: number, end: number, paces: Uint32Array): boolean {
    const { shape, clock } = this;
    const from = head.read(piece, line);
    if (from < 0 || !shape.read(piece, from)) return false;
    const lost = clock.next(shape.seq, shape.ms, head.at);
    if (lost < 0) return false;
    this.lost = lost;
    this.at = clock.now;
    this.follow({ seq: shape.seq, ms: shape.ms, arrived: head.at }, head, piece, end, paces);
    return true;
  }

  /** Lines behind the one that the shape and the head read last. */
  private follow(first: Counted, head: Head, piece: Piece, end: number, paces: Uint32Array): void {
    const { shape } = this;
    let { seq, ms: clock, arrived } = first;
    let further = 0;
    let at = shape.end + 1;
    let clockBefore = clock;
    let arrivedBefore = arrived;
    while (at < end) {
      const from = head.read(piece, at);
      if (from < 0 || head.at < arrived || !shape.read(piece, from)) break;
      const pace = shape.ms - clock;
      if (shape.seq !== seq + 1 || pace < 0 || pace > longestPace) break;
      paces[pace] = (paces[pace] ?? 0) + 1;
      further++;
      clockBefore = clock;
      arrivedBefore = arrived;
      seq = shape.seq;
      clock = shape.ms;
      arrived = head.at;
      at = shape.end + 1;
    }
    this.further = further;
    this.arrived = arrived;
    this.end = at - 1;
    if (further > 0)
      this.clock.followed(
        { seq: seq - 1, ms: clockBefore, arrived: arrivedBefore },
        { seq, ms: clock, arrived },
      );
  }
}
