import { between, type Toleranced } from './values.ts';

/** A copper core by its section in mm2 or its number in the American wire gauge. */
export type CoreSize =
  | { readonly in: 'mm2'; readonly size: number }
  | { readonly in: 'awg'; readonly size: number };

/** Ohm per km at 20 degrees C, plain copper, class 5 at most: IEC 60228 from 0.5 mm2 up, DIN VDE 0295 below. */
const ohmsPerKm: ReadonlyMap<number, number> = new Map([
  [0.14, 134],
  [0.25, 76],
  [0.34, 53],
  [0.5, 39],
  [0.75, 26],
  [1, 19.5],
  [1.5, 13.3],
  [2.5, 7.98],
]);

export const coreSizes: readonly number[] = [...ohmsPerKm.keys()];

/** Resistivity of annealed copper at 20 degrees C, nano-ohm metre (IEC 60028). */
const copper = 17.241;

/** Ohm per km at 20 degrees C; undefined for a section that no table lists. Gauge numbers by the formula of ASTM B258. */
export function coreOhmsPerKm(core: CoreSize): number | undefined {
  if (core.in === 'mm2') return ohmsPerKm.get(core.size);
  const millimetres = gaugeMillimetres(core.size);
  return copper / ((Math.PI / 4) * millimetres ** 2);
}

/** Diameter of a gauge number, mm: 0.127 times 92 to the power of (36 - n) / 39. */
export const gaugeMillimetres = (gauge: number): number => 0.127 * 92 ** ((36 - gauge) / 39);

/** How much of its resistance at `celsius` a copper core has at 20 degrees C: 250 / (230 + t) (IEC 60228). */
export const atTwenty = (celsius: number): number => 250 / (230 + celsius);

/** Coldest and warmest cable in a workshop, degrees C. */
const [coldest, warmest] = [5, 70];

/** There and back, ohm, at 20 degrees C and over the temperatures of a workshop; undefined for an unlisted section. */
export function loopOhms(core: CoreSize, metres: number): Toleranced | undefined {
  const perKm = coreOhmsPerKm(core);
  if (perKm === undefined) return undefined;
  const ohms = (perKm * 2 * metres) / 1000;
  return between(ohms / atTwenty(coldest), ohms, ohms / atTwenty(warmest));
}
