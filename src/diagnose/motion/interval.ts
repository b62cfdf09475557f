/** What is only known to lie between two bounds, both included; the unit is that of its numbers. */
export interface Interval<T extends number = number> {
  readonly low: T;
  readonly high: T;
}

export const exactly = <T extends number>(value: T): Interval<T> => ({ low: value, high: value });

/** The interval between two bounds given in either order. */
export const spanning = <T extends number>(a: T, b: T): Interval<T> =>
  a <= b ? { low: a, high: b } : { low: b, high: a };

export const widthOf = ({ low, high }: Interval): number => high - low;
export const middleOf = ({ low, high }: Interval): number => low + (high - low) / 2;

/** Both bounds further apart by the same amount. */
export const widened = <T extends number>({ low, high }: Interval<T>, by: number): Interval<T> => ({
  low: (low - by) as T,
  high: (high + by) as T,
});

/** What a − b can be (interval arithmetic: R. E. Moore, "Interval Analysis", 1966). */
export const difference = <T extends number>(a: Interval<T>, b: Interval<T>): Interval<T> => ({
  low: (a.low - b.high) as T,
  high: (a.high - b.low) as T,
});

/** The distance between two unknown points: never below zero, whichever lies further out. */
export function distanceBetween<T extends number>(a: Interval<T>, b: Interval<T>): Interval<T> {
  const { low, high } = difference(a, b);
  const nearest = low <= 0 && high >= 0 ? 0 : Math.min(Math.abs(low), Math.abs(high));
  return { low: nearest as T, high: Math.max(Math.abs(low), Math.abs(high)) as T };
}

export const overlaps = (a: Interval, b: Interval): boolean => a.low <= b.high && b.low <= a.high;
