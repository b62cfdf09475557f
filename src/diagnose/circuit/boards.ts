import type { Random } from './random.ts';
import { numbersOf, type Toleranced, type ValueName } from './values.ts';
import type { Wiring, World } from './wiring.ts';

/** Values that spread at all; a part left out, one without tolerance, or one that only delays, makes no corner. */
const spreading = ({ values }: Wiring): readonly ValueName[] =>
  (Object.keys(values) as ValueName[]).filter((name) => {
    if (name === 'filter') return false;
    const value = values[name];
    return value !== undefined && value.low < value.high;
  });

/** Above this many spreading values corners are taken one value at a time, both ways, from the two all-low and all-high boards. */
const mostForAll = 8;

/** Boards with every part at one end of its range: among them the worst, where the reading follows each part one way. */
export function corners(wiring: Wiring): readonly World[] {
  const names = spreading(wiring);
  const board = (high: (name: ValueName) => boolean): World => ({
    numbers: numbersOf(wiring.values, (value, name) => (high(name) ? value.high : value.low)),
    unit: 'any',
  });
  if (names.length <= mostForAll)
    return Array.from({ length: 2 ** names.length }, (_, pattern) =>
      board((name) => (pattern & (1 << Math.max(names.indexOf(name), 0))) !== 0),
    );
  return names.flatMap((odd) => [board((name) => name === odd), board((name) => name !== odd)]);
}

/** A board as bought: each part evenly within its range (by decades where the range spans more than one), its thresholds anywhere. */
export const drawn = (wiring: Wiring, random: Random): World => {
  const values = new Map(spreading(wiring).map((name) => [name, draw(wiring.values[name], random())]));
  return {
    numbers: numbersOf(wiring.values, (value, name) => values.get(name) ?? value.nominal),
    unit: random(),
  };
};

function draw(value: Toleranced | undefined, share: number): number {
  if (value === undefined) return Number.NaN;
  const { low, high } = value;
  return low > 0 && high > 10 * low ? low * (high / low) ** share : low + share * (high - low);
}
