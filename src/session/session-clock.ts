import type { Timekeeper } from '../model/source.ts';
import { type Millis, ms } from '../model/units.ts';

/**
 * The session's own clock: ms since it began, going on after a resume from where it stood. Times are kept to the microsecond, as
 * the capture writes them, so that a replay counts with the very same numbers.
 */
export class SessionClock {
  private readonly time: Timekeeper;
  private readonly offset: number;

  constructor(time: Timekeeper, base: Millis) {
    this.time = time;
    this.offset = base - time.now();
  }

  now(): Millis {
    return this.of(this.time.now());
  }

  /** A moment of the timekeeper on the session's clock. */
  of(moment: Millis): Millis {
    return ms(Math.round((moment + this.offset) * 1000) / 1000);
  }

  after(delay: Millis, then: () => void): () => void {
    return this.time.after(delay, then);
  }
}
