/** A length with no more digits than count: hundredths below ten, tenths below a thousand. `value` in the unit named. */
export function lengthText(value: number, unit: 'mm' | 'degrees'): string {
  const size = Math.abs(value);
  const places = size < 0.1 ? 3 : size < 10 ? 2 : size < 1000 ? 1 : 0;
  const text = value.toFixed(places);
  const short = text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;
  return `${short === '-0' ? '0' : short} ${unit}`;
}
