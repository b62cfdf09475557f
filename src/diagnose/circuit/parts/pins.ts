import type { InputFamily } from '../../../model/wiring-names.ts';
import { type Diode, ground, type Network, type Node, resistor } from '../network.ts';
import { logicLimits, type PinLimits } from '../pin-limits.ts';
import type { Numbers } from '../values.ts';

/** A protection junction in the chip drops about 0.7 V at 10 mA (common practice, no source). */
const clamp = (name: string, from: Node, to: Node): Diode => ({
  kind: 'diode',
  name,
  from,
  to,
  saturation: 1e-14,
  ideality: 1,
});

/** V a clamp lets a pin stand above its supply. */
export const clampVolts = 0.7;

const pin = (v: Numbers): Network => [
  { kind: 'capacitor', name: 'filter', from: 'pin', to: ground, farads: v('filter') },
  clamp('clamp up', 'pin', 'logic +'),
  clamp('clamp down', ground, 'pin'),
];

export const pullUp = (v: Numbers, to: Node): Network => [
  resistor('pull-up', to, 'terminal', v('pull-up')),
  resistor('series', 'terminal', 'pin', v('series')),
  ...pin(v),
];

export const pullDown = (v: Numbers): Network => [
  resistor('pull-down', 'terminal', ground, v('pull-down')),
  resistor('series', 'terminal', 'pin', v('series')),
  ...pin(v),
];

export const divider = (v: Numbers): Network => [
  resistor('series', 'terminal', 'pin', v('series')),
  resistor('divider', 'pin', ground, v('divider')),
  ...pin(v),
];

/** A logic pin's limits at the supply it has; a light that shines pulls the pin of a coupler low. */
export const pinLimits =
  (supply: (v: Numbers) => number, lowMeans: 'conducting' | 'open') =>
  (v: Numbers, family: InputFamily): PinLimits => ({
    kind: 'threshold',
    ...logicLimits(family, supply(v)),
    lowMeans,
    ceiling: supply(v) + clampVolts,
  });
