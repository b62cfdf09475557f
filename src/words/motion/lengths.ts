import type { AxisUnit, Between, Way } from '../../model/motion-facts.ts';

const suffix = { mm: 'mm', degrees: '°' } as const satisfies Record<AxisUnit, string>;
const joined = (text: string, unit: AxisUnit): string =>
  unit === 'degrees' ? `${text}${suffix[unit]}` : `${text} ${suffix[unit]}`;

/** Trailing zeros dropped, the minus sign of print, no minus before nothing. */
function digits(value: number, places: number): string {
  const text = Math.abs(value).toFixed(places);
  const short = text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;
  return value < 0 && Number(short) !== 0 ? `−${short}` : short;
}

/** A coordinate or a way, to the hundredth: "−3.25". */
export const bare = (value: number): string => digits(value, 2);
export const lengthText = (value: number, unit: AxisUnit): string => joined(bare(value), unit);

/** Small lengths, to the thousandth: "0.012 mm". */
export const fineText = (value: number, unit: AxisUnit): string => joined(digits(value, 3), unit);

/** Both bounds rounded away from each other, so that what is told still holds; one number where they agree. */
export function spanText({ low, high }: Between, unit: AxisUnit): string {
  const [least, most] = [Math.floor(low * 100 + 1e-6) / 100, Math.ceil(high * 100 - 1e-6) / 100];
  return least === most ? lengthText(least, unit) : `${bare(least)} to ${lengthText(most, unit)}`;
}

/** "12.5 mm/s (750 mm/min)": per second for sums, per minute as controllers are set. */
export const speedText = (perSecond: number, unit: AxisUnit): string =>
  `${digits(perSecond, 1)} ${suffix[unit]}/s (${digits(perSecond * 60, 0)} ${suffix[unit]}/min)`;

export const signed = (value: number, unit: AxisUnit): string =>
  value > 0 ? `+${lengthText(value, unit)}` : lengthText(value, unit);

export const wayText = (way: Way): string => (way === 1 ? 'positive' : 'negative');

/** A moment in a drawing, s to the hundredth. */
export const secondsOf = (t: number): string => (t / 1000).toFixed(2);
export const secondsSpan = ({ low, high }: Between): string =>
  secondsOf(low) === secondsOf(high) ? secondsOf(low) : `${secondsOf(low)}–${secondsOf(high)}`;
