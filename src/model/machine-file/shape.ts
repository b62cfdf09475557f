import { z } from 'zod';
import { circuitKinds, circuitValues } from './circuit-kinds.ts';
import { allowedWords, counted, oneOf, pair, quantity, words } from './fields.ts';
import { measures } from './quantity.ts';

export const axisLetters = ['X', 'Y', 'Z', 'A', 'B', 'C', 'U', 'V', 'W'] as const;
const side = (meaning: string) => oneOf(['left', 'right', 'front', 'back', 'top', 'bottom'], meaning);
const end = (meaning: string) => oneOf(['negative', 'positive'], meaning);

const duties = z
  .array(oneOf(['home', 'limit', 'probe', 'door', 'stop'], 'what the switch is for'))
  .min(1)
  .meta({ description: 'What the switch is for; one switch may serve several duties' });
allowedWords.add(duties, { allowed: 'a list of home, limit, probe, door, stop, as in [home, limit]' });

type CircuitValue = keyof typeof circuitValues;
const values = Object.fromEntries(
  Object.entries(circuitValues).map(([key, measure]) => [key, quantity(measure, key).optional()]),
) as Record<CircuitValue, z.ZodOptional<ReturnType<typeof quantity>>>;
export const circuit = z
  .strictObject({ kind: oneOf(circuitKinds, 'The input circuit').optional(), ...values })
  .meta({ description: 'The input circuit as built' });
allowedWords.add(circuit, {
  allowed: 'kind and values, as in { kind: contact to ground, supply: 5 V, pull-up: 10 kohm }',
});

const voltage = z.union([z.literal('unknown'), quantity('voltage', 'The voltage on the plug')]).meta({
  description: 'What may stand on the plug; unknown or above 30 V is never asked to be unplugged or jumpered',
});
allowedWords.add(voltage, {
  allowed: 'unknown, or a voltage with its unit, as in 24 V (V, mV)',
  oneOf: ['unknown'],
  unit: 'V',
  units: Object.keys(measures.voltage.units),
});

/** What may be said once for a joined input or switch by switch. */
const shared = {
  duty: duties.optional(),
  axis: oneOf(axisLetters, 'Axis letter (ISO 841)').optional(),
  contact: oneOf(['normally closed', 'normally open', 'unknown'], 'The contact at rest').optional(),
  sensor: oneOf(
    ['contact', 'npn', 'pnp', 'two-wire', 'hall', 'optical', 'unknown'],
    'What kind of switch it is',
  ).optional(),
  circuit: circuit.optional(),
  voltage: voltage.optional(),
  reach: oneOf(['by hand', 'controller only', 'never'], 'Where its plug can be reached').optional(),
};

/** What belongs to one switch alone. */
const own = {
  end: end('Which end of the axis the switch really stands at').optional(),
  side: side('Where a person at `stand` sees it').optional(),
  place: words(200, 'Where it is, in words the person at the machine knows').optional(),
  overtravel: quantity('distance', 'How far it may be driven past its trip').optional(),
  motor: counted(8, 'Which motor of the axis it stops, where there are several').optional(),
};

/** What belongs to the controller's input. */
const wire = {
  polarity: oneOf(
    ['active when open', 'active when closed', 'unknown'],
    "The controller's setting as told",
  ).optional(),
  terminal: words(60, 'The terminal, as printed on the board').optional(),
  connector: words(60, 'Inputs of one connector drop together when it is pulled').optional(),
};

export const switchShape = z.strictObject({ ...shared, ...own });
export const singleShape = z.strictObject({ ...wire, ...shared, ...own });
/** A joined input without its switches, which are read one by one. */
export const joinedShape = z.strictObject({
  joined: oneOf(['series', 'parallel'], 'How the switches share the input'),
  ...wire,
  ...shared,
});

export const axisShape = z.strictObject({
  kind: oneOf(['linear', 'rotary'], 'Left out: A, B and C are rotary (ISO 841)').optional(),
  motors: counted(8, 'How many motors drive it').optional(),
  travel: quantity('extent', 'Travel from end to end').optional(),
  homes: end('The end it homes to').optional(),
  positive: side('Where the tool goes over the work when the axis counts up').optional(),
  moves: oneOf(['tool', 'table'], 'What moves').optional(),
  soft: pair('Soft limits, in machine coordinates').optional(),
  hard: pair('Where the limit switches trip, in machine coordinates').optional(),
  'home value': quantity('length', 'Machine coordinate set at home').optional(),
  'back-off': quantity('distance', 'How far it backs off from the switch').optional(),
  'approach speed': quantity('speed', 'Speed of the first approach').optional(),
  rapid: quantity('speed', 'Fastest positioning speed').optional(),
  acceleration: quantity('acceleration', 'Acceleration').optional(),
  reaction: quantity('time', 'From the input to the start of braking').optional(),
  step: quantity('extent', 'One motor step').optional(),
  'home order': counted(9, 'When it homes: 1 first').optional(),
});

export const topShape = z.strictObject({
  machine: words(200, "The machine's name"),
  units: oneOf(['mm', 'inch'], 'Unit of bare lengths').optional(),
  stand: words(200, 'Where the person stands; left and right are seen from here').optional(),
  polarity: oneOf(
    ['each', 'one for all', 'unknown'],
    'Whether each input has its own setting in the controller',
  ).optional(),
});

export type TopFields = z.output<typeof topShape>;
export type SwitchFields = z.output<typeof switchShape>;
export type SharedFields = Partial<z.output<typeof joinedShape>>;
export type SingleFields = z.output<typeof singleShape>;
export type AxisFields = z.output<typeof axisShape>;
