import { type Millis, ms } from '../../model/units.ts';

/**
 * Follows the sequence and the clock of a native stream, and tells damage from a restart.
 *
 * XOR lets damage through where an even number of flips falls on one bit position: one in ten pairs of flipped bits. What
 * gets past it in a sequence or clock shows as a report that does not follow the one before. One such report decides nothing:
 *
 * - It follows if its sequence is 1 to 256 further, or as far as two reports a millisecond could have gone, and its clock has not
 *   gone back, nor run ahead of the host's clock by more than two seconds and two report periods (a host that was held up reads
 *   old reports late, never early). Between edge and status the clock may go back 100 ms: an edge may be sent after the status
 *   that already shows it.
 * - If it does not follow, it is not believed, until the next report follows it: two agree, so the stream really changed. If the
 *   clock or the sequence went back, the controller restarted; if both went on, reports were lost.
 * - If it follows, not the last report but the one before, and at its hour by the host's clock, then the last was the damaged one;
 *   nothing restarted. A controller that restarts again and again after a report or two takes longer than 200 ms to come back.
 *
 * So damage in one report never looks like a restart, and a restart costs one report. The numbers are common practice, no source.
 */
export interface Steps {
  /** `clock` in ms for a status, in us for an edge, both wrapped at 2^32. */
  take(step: {
    readonly kind: 'status' | 'edge';
    readonly seq: number;
    readonly clock: number;
    readonly arrived: Millis;
  }): Taken;
  /** For a status that follows, what `take` does, sooner: how many were lost before it; its time is `now`. -1 where it goes to `take`. */
  next(seq: number, clock: number, arrived: Millis): number;
  /** Statuses came behind the one that `next` was asked about, each with the sequence that is next and no clock that went back: the last two of them all. */
  followed(before: Counted, last: Counted): void;
  /** Time of the report that was believed last. */
  readonly now: Millis;
  /** Where on the continuous clock a value of the ms clock lies that has no sequence of its own; undefined where it fits nowhere. */
  place(clock: number, arrived: Millis): Millis | undefined;
  reset(): void;
}

/** What a status counts, and when it arrived. */
export interface Counted {
  readonly seq: number;
  /** ms, wrapped at 2^32. */
  readonly ms: number;
  readonly arrived: Millis;
}

export type Taken =
  | { readonly kind: 'follows' | 'restarted'; readonly at: Millis; readonly lost: number }
  | { readonly kind: 'out-of-step' };

/** A report that was believed, or waits for a second one. */
interface Mark {
  kind: 'status' | 'edge';
  seq: number;
  /** Continuous, us. */
  time: number;
  arrived: Millis;
}

/** Of a status whose clock has not been round since the one before. */
const markOf = ({ seq, ms, arrived }: Counted): Mark => ({
  kind: 'status',
  seq,
  time: ms * unit.status,
  arrived,
});

const sequenceTurn = 2 ** 16;
/** A turn of each clock, in us. */
const clockTurn = { status: 2 ** 32 * 1000, edge: 2 ** 32 };
const unit = { status: 1000, edge: 1 };
const lateEdge = 100_000;
const ahead = 2_000_000;
/** Two reports that agree against the one before may lie further apart: nothing but each other speaks for their pace. */
const aheadInDoubt = 60_000_000;
const behindInDoubt = 200;
const mostLost = 256;
const reportsEachMilli = 2;

export function steps(): Steps {
  let last: Mark | undefined;
  let before: Mark | undefined;
  let doubted: Mark | undefined;

  /** us between the last two reports. */
  const pace = (): number =>
    last === undefined || before === undefined ? 0 : Math.min(Math.max(last.time - before.time, 0), ahead);
  /** us from a mark to a clock value, the shorter way round. */
  const elapsed = (from: Mark, kind: Mark['kind'], clock: number): number => {
    const turn = clockTurn[kind];
    const straight = clock * unit[kind] - from.time;
    if (straight >= 0 && straight <= turn / 2) return straight;
    const on = ((straight % turn) + turn) % turn;
    return on > turn / 2 ? on - turn : on;
  };
  const inTime = (from: Mark, kind: Mark['kind'], on: number, arrived: Millis, slack: number): boolean => {
    const back = from.kind === 'edge' || kind === 'edge' ? lateEdge : 0;
    return on >= -back && on <= (arrived - from.arrived) * 1050 + slack + 2 * pace();
  };
  /** Reports lost between a mark and this sequence; undefined where no stream loses so many in that time. */
  const lostSince = (from: Mark, seq: number, on: number, arrived: Millis): number | undefined => {
    const straight = seq - from.seq - 1;
    const reports = straight < 0 ? straight + sequenceTurn : straight;
    const most = mostLost + reportsEachMilli * Math.max(on / 1000, arrived - from.arrived);
    return reports < most ? reports : undefined;
  };

  const isLast = (seq: number, time: number) => seq === last?.seq && time === last.time;

  return {
    take({ kind, seq, clock, arrived }) {
      const believe = (time: number, lost: number, taken: 'follows' | 'restarted'): Taken => {
        before = taken === 'restarted' ? undefined : last;
        last = { kind, seq, time, arrived };
        doubted = undefined;
        return { kind: taken, at: ms(time / 1000), lost };
      };
      const follow = (from: Mark, slack: number) => {
        const on = elapsed(from, kind, clock);
        const lost = lostSince(from, seq, on, arrived);
        return lost !== undefined && inTime(from, kind, on, arrived, slack)
          ? { time: from.time + on, lost }
          : undefined;
      };

      if (last === undefined) {
        // The us clock turns every 72 minutes: an edge alone does not say where on the ms clock it lies.
        return kind === 'edge' ? { kind: 'out-of-step' } : believe(clock * 1000, 0, 'follows');
      }
      const next = follow(last, ahead);
      if (next !== undefined) return believe(next.time, next.lost, 'follows');
      const past = before && follow(before, ahead);
      if (past !== undefined && !isLast(seq, past.time) && onTime(before, past.time, arrived)) {
        last = before;
        return believe(past.time, Math.max(0, past.lost - 1), 'follows');
      }
      if (kind === 'edge') return { kind: 'out-of-step' };
      const agreed = doubted && follow(doubted, aheadInDoubt);
      if (agreed !== undefined) {
        const on = elapsed(last, kind, clock);
        const lost = lostSince(last, seq, on, arrived);
        const wentBack = clock * 1000 < last.time % clockTurn.status || on < 0;
        return wentBack || lost === undefined
          ? believe(clock * 1000, agreed.lost, 'restarted')
          : believe(last.time + on, lost, 'follows');
      }
      doubted = { kind, seq, time: clock * 1000, arrived };
      return { kind: 'out-of-step' };
    },
    next(seq, clock, arrived) {
      if (last === undefined || last.kind === 'edge') return -1;
      const on = clock * unit.status - last.time;
      const straight = seq - last.seq - 1;
      const lost = straight < 0 ? straight + sequenceTurn : straight;
      // Stricter than `take`, which decides where this is not enough.
      if (lost >= mostLost || !(on >= 0 && on <= (arrived - last.arrived) * 1050 + ahead)) return -1;
      const time = last.time + on;
      // Neither is known to anyone else: the older one is written over, so that no report leaves anything behind.
      const mark = before === undefined || before === last ? { ...last } : before;
      before = last;
      last = mark;
      mark.kind = 'status';
      mark.seq = seq;
      mark.time = time;
      mark.arrived = arrived;
      doubted = undefined;
      return lost;
    },
    followed(one, two) {
      before = markOf(one);
      last = markOf(two);
    },
    get now() {
      return ms((last?.time ?? 0) / 1000);
    },
    place(clock, arrived) {
      if (last === undefined) return ms(clock);
      const on = elapsed(last, 'status', clock);
      // Like an edge it may come a little late: it was measured before the status that was sent ahead of it.
      return inTime({ ...last, kind: 'edge' }, 'status', on, arrived, ahead)
        ? ms((last.time + on) / 1000)
        : undefined;
    },
    reset() {
      last = before = doubted = undefined;
    },
  };
}

/** Whether a report came when a sound one after `from` would have: a restart takes longer. */
const onTime = (from: Mark | undefined, time: number, arrived: Millis): boolean =>
  from !== undefined && arrived - from.arrived - (time - from.time) / 1000 <= behindInDoubt;
