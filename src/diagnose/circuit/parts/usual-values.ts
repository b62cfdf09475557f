import type { InputFamily } from '../../../model/wiring-names.ts';
import { absent, between, type Given, givenNumber, type Values, within } from '../values.ts';
import { highestLogic } from './rails.ts';

/** Part values a builder would choose and the tolerance they are bought with (common practice, no source, unless said). */

/** There and back: 5 m of 0.25 mm2; from half a metre to 20 m. */
const cable = between(0.08, 0.8, 3.2);
/** A new contact; open and dry it is above 100 Mohm. */
export const dryContact = {
  'closed contact': between(0.01, 0.05, 0.1),
  'open contact': between(1e8, 1e9, 1e10),
  cable,
} as const satisfies Values;

export const logicFilter = { series: within(1e3, 5), filter: within(100e-9, 20) } as const satisfies Values;

export const logicSupply = (volts: number) => within(volts, 5);
/** 24 V with the tolerance of IEC 61131-2: -15 to +20 %. */
export const fieldSupply = between(20.4, 24, 28.8);

/** Series resistors that give each type the currents IEC 61131-2 asks of it at its voltages; a plain coupler is built for 10 mA. */
const couplerSeries = (family: InputFamily | undefined): number => {
  if (family === 'IEC 61131-2 type 1') return 6800;
  return family === 'IEC 61131-2 type 2' ? 1500 : 2200;
};

export const couplerInput = (family: InputFamily | undefined) =>
  ({
    'logic supply': logicSupply(5),
    series: within(couplerSeries(family), 5),
    'led drop': between(1.15, 1.2, 1.3),
    bleed: absent,
    filter: within(1e-9, 20),
  }) as const satisfies Values;

/** A three-wire sensor; IEC 60947-5-2 allows 3.5 V and 0.5 mA, real ones keep well inside. */
export const threeWire = {
  drop: between(0.7, 1.5, 2),
  leakage: between(1e-7, 1e-6, 50e-6),
  load: absent,
  cable,
} as const satisfies Values;

/** IEC 60947-5-2 allows 8 V and 1.5 mA; real ones 3 to 5 V and 0.5 to 0.8 mA. */
export const twoWireSensor = {
  drop: between(3, 4, 5),
  leakage: between(0.5e-3, 0.65e-3, 0.8e-3),
  cable,
} as const satisfies Values;

/** A pull-up or pull-down that is part of the controller board. */
export const tenKilohm = within(1e4, 5);

/** Board values behind a contact to +: straight into the logic, or through a divider where the supply is above it. */
export const isField = (given: Given, usual: number): boolean =>
  (givenNumber(given, 'supply') ?? usual) > highestLogic;

export const pulledDown: Values = {
  'pull-down': tenKilohm,
  ...logicFilter,
};
/** 24 V becomes 3.1 V at a 3.3 V pin. */
export const divided: Values = {
  series: within(22e3, 1),
  divider: within(3300, 1),
  filter: within(100e-9, 20),
};
