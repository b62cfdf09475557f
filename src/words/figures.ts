import { type Millis, ms, type Seconds, type Share } from '../model/units.ts';

/** Digits after the point, trailing zeros dropped: 2 -> "2", 2.50 -> "2.5". */
function digits(value: number, places: number): string {
  const text = value.toFixed(places);
  return text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;
}

/** A length of time in the unit a reader would choose: ms below ten seconds, else seconds, minutes. No more digits than a status stream can carry. */
export function timeText(time: Millis): string {
  const value: number = time;
  if (value < 10) return `${digits(value, 1)} ms`;
  if (value < 9_999.5) return `${value.toFixed(0)} ms`;
  if (value < 120_000) return `${digits(value / 1000, 1)} s`;
  return `${digits(value / 60_000, 1)} min`;
}

/** A bound told to a reader is rounded so that it still holds. */
export const roundedUp = (time: Millis): Millis =>
  ms(time < 10 ? Math.ceil(time * 10) / 10 : Math.ceil(time));

export const secondsText = (time: Seconds): string => `${digits(time, 1)} s`;

/** A share as whole per cent; below ten per cent with two digits in all, which is all that a handful of presses can bear. */
export function percentText(value: Share): string {
  const percent = value * 100;
  if (percent >= 9.95) return `${percent.toFixed(0)} %`;
  return `${digits(percent, percent >= 0.995 ? 1 : 2)} %`;
}

/** "2 inputs", "1 input"; the plural is given where it is not just an s. */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

/** "a", "a and b", "a, b and c". */
export function listed(items: readonly string[], last = 'and'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${last} ${items[items.length - 1]}`;
}

/** An ISO 8601 moment in UTC as stored, to the minute, without asking any calendar: "2026-03-01 14:05 UTC"; other text as it stands. */
export function momentText(stored: string): string {
  const found = /^(\d{4}-\d\d-\d\d)T(\d\d:\d\d)(:\d\d(\.\d+)?)?Z$/.exec(stored);
  return found ? `${found[1]} ${found[2]} UTC` : stored;
}

/** At most `most` characters, cut with an ellipsis. */
export const clip = (text: string, most: number): string =>
  text.length <= most ? text : `${text.slice(0, most - 1).trimEnd()}…`;

/** A rate or a count that is not whole: two digits that count, more before the point. */
export const rateText = (rate: number): string =>
  rate >= 10 ? rate.toFixed(0) : digits(rate, rate >= 1 ? 1 : rate >= 0.1 ? 2 : 3);
