import type { circuitValues } from '../../model/machine-file/circuit-kinds.ts';

/** What a wiring may be told to differ in; the two states of the contact beside the values of a machine file. */
export type ValueName = keyof typeof circuitValues | 'closed contact' | 'open contact';

/** A value as chosen, and the range in which a part bought under that name may lie. V, ohm, F, A. */
export interface Toleranced {
  readonly nominal: number;
  readonly low: number;
  readonly high: number;
}
export type Values = Readonly<Partial<Record<ValueName, Toleranced>>>;
/** Values a person or a machine file gave; one without a range keeps the relative tolerance of the one it replaces. */
export type Given = Readonly<Partial<Record<ValueName, number | Toleranced>>>;
/** The number that was given, whether or not it came with a range. */
export const givenNumber = (given: Given, name: ValueName): number | undefined => {
  const told = given[name];
  return typeof told === 'object' ? told.nominal : told;
};
/** One board's values, whichever way they were drawn. */
export type Numbers = (name: ValueName) => number;

export const between = (low: number, nominal: number, high: number): Toleranced => ({ nominal, low, high });
/** So many per cent either way. */
export const within = (nominal: number, percent: number): Toleranced => ({
  nominal,
  low: nominal * (1 - percent / 100),
  high: nominal * (1 + percent / 100),
});
/** A part that is left out. */
export const absent: Toleranced = between(
  Number.POSITIVE_INFINITY,
  Number.POSITIVE_INFINITY,
  Number.POSITIVE_INFINITY,
);

export function withGiven(values: Values, given: Given): Values {
  const changed = Object.entries(values).map(([name, value]) => {
    const told = given[name as ValueName];
    if (told === undefined) return [name, value] as const;
    return [name, typeof told === 'number' ? scaled(value, told) : told] as const;
  });
  return Object.fromEntries(changed);
}

/** A part that was left out and is now given gets the tolerance of a common film resistor. */
const scaled = ({ nominal, low, high }: Toleranced, told: number): Toleranced =>
  Number.isFinite(nominal) && nominal > 0
    ? between(told * (low / nominal), told, told * (high / nominal))
    : within(told, 5);

/** The values of a board where each stands as `pick` says. Asking for a value the circuit has not is a defect of its template. */
export const numbersOf =
  (values: Values, pick: (value: Toleranced, name: ValueName) => number): Numbers =>
  (name) => {
    const value = values[name];
    if (value === undefined) throw new RangeError(`The circuit has no value named ${name}.`);
    return pick(value, name);
  };

export const nominal = (values: Values): Numbers => numbersOf(values, (value) => value.nominal);
