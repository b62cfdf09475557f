import {
  type Control,
  type Diode,
  idealityFor,
  type Network,
  type Node,
  resistor,
  type Switch,
} from '../network.ts';
import type { Numbers } from '../values.ts';
import { pressed } from './contacts.ts';
import { highestLogic } from './rails.ts';

/** The output's drop is stated at 10 mA; below, it is a little less. */
const ratedAmps = 0.01;
/** The part of it that grows with the current and keeps a shorted output from drawing more than the supply has, ohm. */
const outputOhms = 5;
const saturation = 1e-12;

const drop = (from: Node, to: Node, volts: number): Diode => ({
  kind: 'diode',
  name: 'output drop',
  from,
  to,
  saturation,
  ideality: idealityFor(Math.max(volts - outputOhms * ratedAmps, 0.04), ratedAmps, saturation),
});

/** A sensor for 10 to 30 V is dead below 8 V; a 5 V module below 3 V and sure from 4.5 V (common practice, no source). */
const powered = (rated: number): Control => ({
  by: 'voltage',
  plus: 'device supply',
  minus: 'device common',
  ...(rated > highestLogic ? { off: 8, on: 10 } : { off: 3, on: 4.5 }),
});

const output = (from: Node, to: Node, v: Numbers, when: readonly Control[]): Switch => ({
  kind: 'switch',
  name: pressed,
  from,
  to,
  closed: false,
  closedOhms: outputOhms,
  openOhms: v('supply') / Math.max(v('leakage'), 1e-9),
  when,
});

/** What the sensor takes for itself: 10 mA (common practice, no source). */
const draw = (v: Numbers) => resistor('sensor draw', 'device supply', 'device common', v('supply') / 0.01);

/** Joins the signal to the sensor's 0 V when it conducts; may hold a load resistor to its own supply. */
export const npn = (v: Numbers): Network => [
  draw(v),
  drop('device signal', 'output', v('drop')),
  output('output', 'device common', v, [powered(v('supply'))]),
  resistor('load', 'device supply', 'device signal', v('load')),
];

/** Joins the signal to the sensor's + when it conducts. */
export const pnp = (v: Numbers): Network => [
  draw(v),
  output('device supply', 'output', v, [powered(v('supply'))]),
  drop('output', 'device signal', v('drop')),
  resistor('load', 'device signal', 'device common', v('load')),
];

/** Lives on the current it lets pass: drops volts when on, leaks when off. */
export const twoWire = (v: Numbers, plus: Node, minus: Node): Network => [
  drop(plus, 'output', v('drop')),
  {
    kind: 'switch',
    name: pressed,
    from: 'output',
    to: minus,
    closed: false,
    closedOhms: outputOhms,
    openOhms: 1e9,
  },
  resistor('off-state leakage', plus, minus, v('supply') / v('leakage')),
];

/** A slot: the light must burn before the receiver can conduct. */
export const slot = (v: Numbers): Network => [
  resistor('emitter resistor', 'device supply', 'emitter', 220),
  {
    kind: 'diode',
    name: 'emitter',
    from: 'emitter',
    to: 'device common',
    saturation,
    ideality: idealityFor(1.2, ratedAmps, saturation),
  },
  drop('device signal', 'output', v('drop')),
  output('output', 'device common', v, [{ by: 'current', through: 'emitter', off: 2e-3, on: 5e-3 }]),
  resistor('load', 'device supply', 'device signal', v('load')),
];
