import type { Random } from './random.ts';

/** How a contact settles after a change: for how long it bounces, and how long it stays each way in between; ms. */
export interface BounceHabit {
  readonly lasts: readonly [number, number];
  readonly stays: readonly [number, number];
}

/** Sixteen switches measured by J. Ganssle bounced 1.6 ms on average and 6.2 ms at the longest ("A Guide to Debouncing"). */
export const sound: BounceHabit = { lasts: [0.2, 6.2], stays: [0.3, 1.5] };

/** A worn one goes on for as long as the worst he met, about 150 ms (from memory), and stays each way long enough to be reported. */
export const worn: BounceHabit = { lasts: [70, 140], stays: [11, 19] };

/** Moments after a change, ms, at which the contact goes the other way; an even number, so that it ends where it was going. */
export function bounces({ lasts, stays }: BounceHabit, random: Random): readonly number[] {
  // Drawn twice and the shorter kept: most bounce is brief.
  const over = Math.min(random.within(...lasts), random.within(...lasts));
  const turns: number[] = [];
  for (let at = random.within(...stays); at < over; at += random.within(...stays)) turns.push(at);
  return turns.length % 2 === 0 ? turns : turns.slice(0, -1);
}
