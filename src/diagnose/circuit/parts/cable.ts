import { ground, type Network, type Node, resistor } from '../network.ts';
import type { Numbers } from '../values.ts';

export type Core = 'signal' | 'common' | 'supply';

/** Mated plug, and clamp or crimp, ohm (common practice, no source). */
const plugOhms = 0.02;
const clampOhms = 0.01;
/** Dry cable, ohm; new ones are well above 100 Mohm. */
const insulationOhms = 1e9;

/** One core from the controller's plug to the clamp at the switch. `cable` is there and back, so a core has half. */
export const core = (which: Core, controller: Node, v: Numbers): Network => [
  resistor(`${which} plug`, controller, `cable ${which}`, plugOhms),
  resistor(`${which} core`, `cable ${which}`, `switch ${which}`, v('cable') / 2),
  resistor(`${which} clamp`, `switch ${which}`, `device ${which}`, clampOhms),
];

export const insulation: Network = [resistor('insulation', 'cable signal', ground, insulationOhms)];

/** The two cores of a plain contact. */
export const pair = (v: Numbers, common: Node): Network => [
  ...core('signal', 'terminal', v),
  ...core('common', common, v),
  ...insulation,
];

/** The three cores of a sensor. */
export const three = (v: Numbers, plus: Node, minus: Node): Network => [
  ...core('signal', 'terminal', v),
  ...core('common', minus, v),
  ...core('supply', plus, v),
  ...insulation,
];
