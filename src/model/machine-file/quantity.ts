/** A number with a unit as people write it beside a machine: "5 V", "10 kohm", "800 mm/min". */
export interface Measure {
  readonly name: string;
  /** Unit as written -> factor to the base unit. */
  readonly units: Readonly<Record<string, number>>;
  /** Whether a bare number may stand, in the machine's own unit of length (degrees on a rotary axis). */
  readonly bare: boolean;
  readonly least: 'above zero' | 'zero' | 'any';
  readonly example: string;
}

const inch = 25.4; // mm, exact by the international yard and pound agreement of 1959

const lengths = { mm: 1, um: 0.001, cm: 10, m: 1000, in: inch, inch, deg: 1 };

export const measures = {
  length: { name: 'a length', units: lengths, bare: true, least: 'any', example: '2.5 mm' },
  extent: { name: 'a length above zero', units: lengths, bare: true, least: 'above zero', example: '420 mm' },
  distance: { name: 'a length of zero or more', units: lengths, bare: true, least: 'zero', example: '3 mm' },
  speed: {
    name: 'a speed with its unit',
    units: {
      'mm/min': 1,
      'mm/s': 60,
      'm/min': 1000,
      'in/min': inch,
      'in/s': inch * 60,
      'deg/min': 1,
      'deg/s': 60,
    },
    bare: false,
    least: 'above zero',
    example: '800 mm/min',
  },
  acceleration: {
    name: 'an acceleration with its unit',
    units: { 'mm/s2': 1, 'm/s2': 1000, 'in/s2': inch, 'deg/s2': 1 },
    bare: false,
    least: 'above zero',
    example: '250 mm/s2',
  },
  time: {
    name: 'a time with its unit',
    units: { ms: 1, us: 0.001, s: 1000 },
    bare: false,
    least: 'zero',
    example: '10 ms',
  },
  voltage: {
    name: 'a voltage with its unit',
    units: { V: 1, mV: 0.001 },
    bare: false,
    least: 'above zero',
    example: '24 V',
  },
  resistance: {
    name: 'a resistance with its unit',
    units: { ohm: 1, kohm: 1000, Mohm: 1e6 },
    bare: false,
    least: 'zero',
    example: '10 kohm',
  },
  capacitance: {
    name: 'a capacitance with its unit',
    units: { uF: 1e-6, nF: 1e-9, pF: 1e-12 },
    bare: false,
    least: 'zero',
    example: '100 nF',
  },
  current: {
    name: 'a current with its unit',
    units: { A: 1, mA: 0.001, uA: 1e-6 },
    bare: false,
    least: 'zero',
    example: '2 mA',
  },
} as const satisfies Record<string, Measure>;

export type MeasureName = keyof typeof measures;

/** Signs that mean the same unit: the ohm sign and the Greek letter, micro, the raised two, the degree sign. */
const spelled = (unit: string): string =>
  unit
    .replace(/[\u2126\u03a9]/g, 'ohm')
    .replace(/[\u00b5\u03bc]/g, 'u')
    .replace(/\u00b2|\^2/g, '2')
    .replace(/\u00b0|degrees?/g, 'deg')
    .replace(/inches/g, 'in');

const shape = /^([-+]?\d{1,12}(?:\.\d{1,12})?)\s*([^\s\d].{0,11})?$/u;

/** The number and unit of a written quantity (unit '' where bare), or undefined where it is none of this measure. */
export function quantityOf(
  measure: Measure,
  written: string | number,
): { value: number; unit: string } | undefined {
  const match = shape.exec(String(written).trim());
  const unit = spelled(match?.[2] ?? '');
  const value = Number(match?.[1]);
  if (match === null || !Number.isFinite(value)) return undefined;
  if (unit === '' ? !measure.bare : !Object.hasOwn(measure.units, unit)) return undefined;
  if (measure.least === 'zero' && value < 0) return undefined;
  if (measure.least === 'above zero' && value <= 0) return undefined;
  return { value, unit };
}

/** In the base unit (mm, mm/min, mm/s2, ms, V, ohm, F, A; degrees where the unit says so). `bareFactor`: what a bare number is worth. */
export function inBaseUnit(
  measure: Measure,
  written: string | number,
  bareFactor: number,
): number | undefined {
  const found = quantityOf(measure, written);
  if (found === undefined) return undefined;
  const factor = found.unit === '' ? bareFactor : (measure.units[found.unit] ?? Number.NaN);
  // Twelve digits: 3 in is 76.2 mm, not the nearest binary fraction of a product.
  return Number((found.value * factor).toPrecision(12));
}

export const isAngle = (written: string | number): boolean => /(?:deg|°)/u.test(String(written));

/** What may stand there, in words. */
export function allowedQuantity(measure: Measure): string {
  const units = Object.keys(measure.units).join(', ');
  return `${measure.name}, as in ${measure.example} (${units}${measure.bare ? '; a bare number is in the unit of `units`' : ''})`;
}
