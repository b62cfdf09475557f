import type { Random } from '../random.ts';
import { nameDrawer, shuffled } from './names-drawn.ts';
import type { Shape, Snapshot } from './shape.ts';

/** One thing a report tells: under a name, a value, a list, values with names of their own, or a set of words. */
export interface ToldPart {
  readonly name: string;
  readonly values: readonly string[];
  /** Beside each value its own name. */
  readonly names?: readonly string[];
  readonly isSet?: true;
}
export type PartWriter = (snapshot: Snapshot) => ToldPart;

const unitsPerMm = { mm: 1, unit: 1, inch: 1 / 25.4, counts: 80, none: 1 };
const zeroOfWork = [112.35, 64.8, -20.15, 7.5, 3.25, 9.1];

/** Draws names and order once, and then writes the parts of report after report. */
export function partWriters(
  shape: Shape,
  inputs: number,
  axes: number,
  random: Random,
): readonly PartWriter[] {
  const draw = nameDrawer(random);
  const told = [inputsPart(shape, inputs, draw, random), ...positionParts(shape, axes, draw)];
  if (shape.activity !== 'none') told.push(activityPart(shape, draw));
  for (let i = 0; i < shape.extras; i++) told.push(extraPart(i, draw(), random));
  const parts = shuffled(told, random);
  // The inputs never come last, whatever was drawn.
  return parts.at(-1) === told[0] ? [...parts.slice(-1), ...parts.slice(0, -1)] : parts;
}

function inputsPart(shape: Shape, count: number, draw: () => string, random: Random): PartWriter {
  const name = draw();
  const names = Array.from({ length: count }, draw);
  const [on, off] = [draw(), draw()];
  const places = shuffled(
    Array.from({ length: count }, (_, i) => i),
    random,
  );
  /** Inputs in the order of the report. */
  const ordered = (all: readonly boolean[]) => places.map((each) => (all[each] ?? false) !== shape.reversed);
  const mask = (all: readonly boolean[]) =>
    ordered(all).reduce((sum, active, i) => sum + (active ? 2 ** i : 0), 0);
  const digits = Math.ceil(count / 4);
  switch (shape.inputs) {
    case 'figure-each':
      return ({ inputs: all }) => ({
        name,
        names,
        values: ordered(all).map((active) => (active ? '1' : '0')),
      });
    case 'word-each':
      return ({ inputs: all }) => ({
        name,
        names,
        values: ordered(all).map((active) => (active ? on : off)),
      });
    case 'figures':
      return ({ inputs: all }) => ({ name, values: ordered(all).map((active) => (active ? '1' : '0')) });
    case 'decimal':
      return ({ inputs: all }) => ({ name, values: [String(mask(all))] });
    case 'hex':
      return ({ inputs: all }) => ({ name, values: [`0x${mask(all).toString(16).padStart(digits, '0')}`] });
    case 'binary':
      return ({ inputs: all }) => ({ name, values: [mask(all).toString(2).padStart(count, '0')] });
    case 'signs':
      return ({ inputs: all }) => ({
        name,
        values: [
          ordered(all)
            .map((active) => (active ? '#' : '.'))
            .join(''),
        ],
      });
    case 'capitals':
      return ({ inputs: all }) => ({
        name,
        values: [
          ordered(all)
            .map((active, i) => String.fromCharCode((active ? 65 : 97) + i))
            .join(''),
        ],
      });
    case 'set':
      return ({ inputs: all }) => ({
        name,
        values: ordered(all).flatMap((active, i) => (active ? [names[i] ?? ''] : [])),
        isSet: true,
      });
  }
}

function positionParts({ positions: form, twice }: Shape, axes: number, draw: () => string): PartWriter[] {
  if (form === 'none') return [];
  const written = (position: number) => {
    const value = position * unitsPerMm[form];
    if (form === 'counts') return String(Math.round(value));
    return `${value.toFixed(form === 'inch' ? 4 : 3)}${form === 'unit' ? 'mm' : ''}`;
  };
  const [machine, work] = [draw(), draw()];
  const from = (name: string, zero: readonly number[]): PartWriter => {
    return ({ positions }) => ({
      name,
      values: positions.slice(0, axes).map((position, i) => written(position - (zero[i] ?? 0))),
    });
  };
  return [from(machine, []), ...(twice ? [from(work, zeroOfWork)] : [])];
}

function activityPart({ activity }: Shape, draw: () => string): PartWriter {
  const name = draw();
  const words = { still: draw(), moving: draw(), homing: draw(), fault: draw(), '?': draw() };
  const numbers = { still: '2', moving: '5', homing: '6', fault: '9', '?': '0' };
  return ({ activity: doing }) => ({ name, values: [activity === 'word' ? words[doing] : numbers[doing]] });
}

/** A clock, a count, a warmth that wanders, a fixed figure. */
function extraPart(which: number, name: string, random: Random): PartWriter {
  const told: readonly PartWriter[] = [
    ({ ms }) => ({ name, values: [String(Math.round(ms))] }),
    ({ seq }) => ({ name, values: [String(seq % 256)] }),
    () => ({ name, values: [(31 + random.within(0, 2)).toFixed(1)] }),
    () => ({ name, values: ['100'] }),
  ];
  return told[which % told.length] ?? (() => ({ name, values: ['0'] }));
}
