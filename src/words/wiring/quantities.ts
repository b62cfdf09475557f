/** Three digits in the unit a person at the machine would choose; no locale. */
function engineering(value: number, unit: string, scales: readonly (readonly [number, string])[]): string {
  const size = Math.abs(value);
  if (size === 0) return `0 ${unit}`;
  const [factor, prefix] = scales.find(([least]) => size >= least * 0.9995) ?? scales.at(-1) ?? [1, ''];
  return `${threeDigits(value / factor)} ${prefix}${unit}`;
}

function threeDigits(value: number): string {
  const size = Math.abs(value);
  const places = size >= 99.95 ? 0 : size >= 9.995 ? 1 : 2;
  const text = value.toFixed(places);
  return text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;
}

/** Ohms from a milliohm to a gigohm; beyond, the part is not there. */
export function ohmText(ohms: number): string {
  if (!Number.isFinite(ohms)) return 'none';
  // A meter shows 0.8 ohm; thousandths are for contacts.
  if (ohms >= 0.1 && ohms < 1) return `${threeDigits(ohms)} ohm`;
  return engineering(ohms, 'ohm', [
    [1e9, 'G'],
    [1e6, 'M'],
    [1e3, 'k'],
    [1, ''],
    [1e-3, 'm'],
  ]);
}

/** Volts as a meter shows them: two places, three below one. */
export const voltText = (volts: number): string => {
  const size = Math.abs(volts);
  const text = volts.toFixed(size < 0.9995 ? 3 : 2);
  return `${Number(text) === 0 ? text.replace('-', '') : text} V`;
};

export const ampText = (amps: number): string =>
  Math.abs(amps) < 1e-9
    ? '0 A'
    : engineering(amps, 'A', [
        [1, ''],
        [1e-3, 'm'],
        [1e-6, 'µ'],
        [1e-9, 'n'],
      ]);

export const wattText = (watts: number): string =>
  Math.abs(watts) < 1e-6
    ? '0 W'
    : engineering(watts, 'W', [
        [1, ''],
        [1e-3, 'm'],
        [1e-6, 'µ'],
      ]);

export const faradText = (farads: number): string =>
  engineering(farads, 'F', [
    [1e-6, 'µ'],
    [1e-9, 'n'],
    [1e-12, 'p'],
  ]);

/** A supply as people say it: "24 V". */
const supplyText = (volts: number): string =>
  engineering(volts, 'V', [
    [1, ''],
    [1e-3, 'm'],
  ]);

const writers = {
  voltage: supplyText,
  resistance: ohmText,
  capacitance: faradText,
  current: ampText,
} as const;

/** A circuit's value by what it is measured in. */
export const quantityText = (value: number, measure: keyof typeof writers): string => writers[measure](value);
