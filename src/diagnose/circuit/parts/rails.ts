import { ground, type Network, resistor } from '../network.ts';
import type { Numbers } from '../values.ts';

/** Highest supply that can be the logic's own, V. */
export const highestLogic = 5.5;

const source = (name: string, from: string, to: string, volts: number) =>
  ({ kind: 'voltage', name, from, to, volts }) as const;

/** Both 0 V of a machine are one wire where the inputs are not isolated. */
const joined = resistor('returns joined', 'field 0 V', ground, 0.01);

/** The controller's own supply feeds everything: the pull-up and, where there is one, the sensor. */
export const logicRails =
  (volts: (v: Numbers) => number) =>
  (v: Numbers): Network => [source('logic supply', 'logic +', ground, volts(v)), joined];

/** A second supply feeds switches or sensors through its fuse and wiring (a tenth of an ohm, common practice). */
export const fieldRails = (v: Numbers): Network => [
  source('logic supply', 'logic +', ground, v('logic supply')),
  source('field supply', 'field source', 'field 0 V', v('supply')),
  resistor('feed', 'field source', 'field +', 0.1),
  joined,
];
