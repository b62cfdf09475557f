import type { MeasureName } from './quantity.ts';

/** Input circuits a file may name. What each is made of is the wiring calculation's business. */
export const circuitKinds = [
  'contact to ground',
  'contact to supply',
  'optocoupler fed from supply',
  'optocoupler drawn to ground',
  'npn into pull-up',
  'npn into optocoupler',
  'pnp into divider',
  'pnp into optocoupler',
  'two-wire into optocoupler',
  'hall module',
  'slotted optical module',
  'supervised contact',
  'touch plate',
  'touch probe',
  'unknown',
] as const;

export type CircuitKind = (typeof circuitKinds)[number];

/** Values a circuit may be given beside its kind, and what each is measured in. */
export const circuitValues = {
  supply: 'voltage',
  'logic supply': 'voltage',
  'pull-up': 'resistance',
  'pull-down': 'resistance',
  series: 'resistance',
  bleed: 'resistance',
  divider: 'resistance',
  load: 'resistance',
  cable: 'resistance',
  'end resistor': 'resistance',
  'contact resistor': 'resistance',
  filter: 'capacitance',
  drop: 'voltage',
  'led drop': 'voltage',
  leakage: 'current',
} as const satisfies Record<string, MeasureName>;

export type CircuitValue = keyof typeof circuitValues;
