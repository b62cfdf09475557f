import type { Timekeeper } from '../model/source.ts';
import { ms } from '../model/units.ts';

/** The host's monotonic clock and timers. */
export const realTime: Timekeeper = {
  now: () => ms(performance.now()),
  after(delay, then) {
    const timer = setTimeout(then, delay);
    return () => clearTimeout(timer);
  },
};
