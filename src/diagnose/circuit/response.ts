import { type Millis, ms } from '../../model/units.ts';
import type { Network } from './network.ts';
import type { PinLimits } from './pin-limits.ts';
import { solve } from './solve.ts';

/** How the pin follows when the line goes from one state to another; times from the change, infinite where it never happens. */
export interface Response {
  /** From here on some unit may see the change: pulses shorter than this go unseen by every one. */
  readonly mayShow: Millis;
  /** From here on every unit sees it: the shortest pulse that surely gets through. */
  readonly surelyShows: Millis;
}

const never = ms(Number.POSITIVE_INFINITY);

/** First order: the filter behind the resistance seen at the pin in the state the line goes to. `limits`: from where, to where. */
export function responseOf(from: Network, to: Network, limits: PinLimits): Response {
  const [before, after] = [solve(from), solve(to)];
  const [start, end, ohms] = [before.voltsAt('pin'), after.voltsAt('pin'), after.sourceOhms('pin')];
  if (start === undefined || end === undefined || ohms === undefined || limits.kind === 'window')
    return { mayShow: never, surelyShows: never };
  const rises = end > start;
  const [first, last] = rises ? [limits.low, limits.high] : [limits.high, limits.low];
  const tau = ms(ohms * faradsAt(to) * 1000);
  return { mayShow: crossing(start, end, first, tau), surelyShows: crossing(start, end, last, tau) };
}

/** When a first-order step from `start` towards `end` crosses `threshold`: -tau ln((end - threshold) / (end - start)). */
export function crossing(start: number, end: number, threshold: number, tau: Millis): Millis {
  const passed = end > start ? start >= threshold : start <= threshold;
  if (passed) return ms(0);
  const left = (end - threshold) / (end - start);
  return left > 0 && left <= 1 ? ms(-tau * Math.log(left)) : never;
}

const faradsAt = (network: Network): number =>
  network.reduce(
    (sum, each) => (each.kind === 'capacitor' && each.name === 'filter' ? sum + each.farads : sum),
    0,
  );
