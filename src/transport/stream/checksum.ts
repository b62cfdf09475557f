/** XOR of the characters' codes, as NMEA 0183 sums the characters between `$` and `*`. */
export function xorOf(text: string): number {
  let sum = 0;
  for (let i = 0; i < text.length; i++) sum ^= text.charCodeAt(i);
  return sum & 0xff;
}

const texts = Array.from({ length: 0x100 }, (_, sum) => sum.toString(16).toUpperCase().padStart(2, '0'));

/** A sum below 256 as two upper-case hex digits, the high one first. */
export const sumText = (sum: number): string => texts[sum] ?? '';

/** Those of a text's sum. */
export const sumDigits = (text: string): string => sumText(xorOf(text));
