import type { Axis, AxisLetter, DeclaredCircuit, Input, InputVoltage, Machine, Switch } from '../machine.ts';
import { mm, volts } from '../units.ts';
import type { AxisPart, InputPart, Parts } from './parts.ts';
import { inBaseUnit, type MeasureName, measures } from './quantity.ts';
import { type AxisFields, axisLetters, type SharedFields, type SwitchFields } from './shape.ts';

type Written = string | number | undefined;
/** The number in base units; a bare length is worth `bare`. */
const read = (name: MeasureName, written: Written, bare = 1): number | undefined =>
  written === undefined ? undefined : inBaseUnit(measures[name], written, bare);

const readMm = (name: MeasureName, written: Written, bare: number) => {
  const value = read(name, written, bare);
  return value === undefined ? undefined : mm(value);
};

const isLetter = (name: string): name is AxisLetter => axisLetters.some((letter) => letter === name);

/** ISO 841: A, B and C turn about X, Y and Z. */
export const isRotary = (letter: string, fields: AxisFields): boolean =>
  (fields.kind ?? ('ABC'.includes(letter) ? 'rotary' : 'linear')) === 'rotary';

/** The machine of a file in which nothing is wrong. */
export function machineOf({ top, inputs, axes }: Parts): Machine {
  const units = top?.units ?? 'mm';
  const factor = units === 'inch' ? 25.4 : 1;
  const turning = new Set(
    axes.filter((axis) => axis.fields && isRotary(axis.name, axis.fields)).map((axis) => axis.name),
  );
  const bareOn = (axis: string | undefined) => (axis !== undefined && turning.has(axis) ? 1 : factor);
  const built = inputs.map((input) => inputOf(input, bareOn));
  const declared = axes.flatMap((axis) =>
    isLetter(axis.name) ? [axisOf(axis, axis.name, bareOn(axis.name))] : [],
  );
  // A switch on an axis the file says nothing of: the axis is there, and may drop like any other.
  const named = built.flatMap((input) => input.switches.flatMap((each) => each.axis ?? []));
  const unsaid = axisLetters.filter(
    (letter) => named.includes(letter) && !declared.some((axis) => axis.letter === letter),
  );
  return {
    name: top?.machine ?? '',
    units,
    ...(top?.units === undefined ? { unitsAssumed: true as const } : {}),
    stand: top?.stand,
    polarity: top?.polarity ?? 'unknown',
    inputs: built,
    axes: [...declared, ...unsaid.map((letter) => unsaidAxis(letter))],
  };
}

const unsaidAxis = (letter: AxisLetter): Axis => axisOf({ fields: {} }, letter, 1);

function inputOf(part: InputPart, bareOn: (axis: string | undefined) => number): Input {
  const { name, fields } = part;
  const of = (own: SwitchFields, alone: string | undefined) => switchOf(name, alone, own, bareOn);
  const [first, ...more] =
    part.kind === 'single'
      ? [of(part.fields ?? {}, undefined)]
      : part.switches.map((each) => of({ ...sharedOf(part.fields), ...each.fields }, each.name));
  return {
    name,
    joined: part.kind === 'single' ? 'single' : (part.fields?.joined ?? 'series'),
    polarity: fields?.polarity ?? 'unknown',
    terminal: fields?.terminal,
    connector: fields?.connector,
    switches: [first ?? of({}, undefined), ...more],
  };
}

/** What a joined input says once for all its switches. */
function sharedOf(fields: SharedFields | undefined): SwitchFields {
  const { joined: _, polarity: __, terminal: ___, connector: ____, ...shared } = fields ?? {};
  return shared;
}

function switchOf(
  input: string,
  name: string | undefined,
  own: SwitchFields,
  bareOn: (axis: string | undefined) => number,
): Switch {
  const circuit = circuitOf(own.circuit);
  return {
    subject: name === undefined ? input : `${input}/${name}`,
    input,
    name,
    duty: [...new Set(own.duty ?? [])],
    axis: own.axis,
    end: own.end,
    side: own.side,
    place: own.place,
    contact: own.contact ?? 'unknown',
    sensor: own.sensor ?? 'unknown',
    circuit,
    voltage: voltageOf(own.voltage, circuit),
    reach: own.reach ?? 'by hand',
    overtravel: readMm('distance', own.overtravel, bareOn(own.axis)),
    motor: own.motor,
  };
}

function circuitOf(fields: SwitchFields['circuit']): DeclaredCircuit | undefined {
  if (fields === undefined) return undefined;
  const { kind, ...values } = fields;
  const supply = read('voltage', values.supply);
  const written = Object.entries(values).flatMap(([key, value]) =>
    value === undefined ? [] : [[key, String(value)] as const],
  );
  return {
    kind: kind ?? 'unknown',
    supply: supply === undefined ? undefined : volts(supply),
    values: Object.fromEntries(written),
  };
}

function voltageOf(written: Written, circuit: DeclaredCircuit | undefined): InputVoltage {
  if (written === 'unknown') return { known: 'told-unknown' };
  const told = read('voltage', written);
  if (told !== undefined) return { known: 'volts', volts: volts(told), from: 'voltage' };
  if (circuit?.supply !== undefined) return { known: 'volts', volts: circuit.supply, from: 'circuit' };
  return { known: 'not-stated' };
}

function axisOf({ fields }: Pick<AxisPart, 'fields'>, letter: AxisLetter, bare: number): Axis {
  const said = fields ?? {};
  const ends = (pair: readonly [Written, Written] | undefined) => {
    const [low, high] = [readMm('length', pair?.[0], bare), readMm('length', pair?.[1], bare)];
    return low === undefined || high === undefined ? undefined : ([low, high] as const);
  };
  return {
    letter,
    kind: isRotary(letter, said) ? 'rotary' : 'linear',
    motors: said.motors ?? 1,
    travel: readMm('extent', said.travel, bare),
    homes: said.homes,
    positive: said.positive,
    moves: said.moves,
    soft: ends(said.soft),
    hard: ends(said.hard),
    homeValue: readMm('length', said['home value'], bare),
    backOff: readMm('distance', said['back-off'], bare),
    approachSpeed: read('speed', said['approach speed']),
    rapid: read('speed', said.rapid),
    acceleration: read('acceleration', said.acceleration),
    reaction: read('time', said.reaction),
    step: readMm('extent', said.step, bare),
    homeOrder: said['home order'],
  };
}
