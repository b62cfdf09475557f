/** The wirings whose behaviour can be computed; also what a person calls them on the command line. */
export const wiringNames = [
  'normally-open-to-ground',
  'normally-closed-to-ground',
  'normally-open-to-supply',
  'normally-closed-to-supply',
  'contact-into-fed-optocoupler',
  'contact-into-drawn-optocoupler',
  'npn-into-pull-up',
  'npn-into-optocoupler',
  'pnp-into-optocoupler',
  'pnp-into-divider',
  'pnp-into-pull-up',
  'npn-into-pull-down',
  'npn-into-fed-optocoupler',
  'pnp-into-drawn-optocoupler',
  'two-wire-into-optocoupler',
  'hall-module',
  'slotted-optical-module',
  'closed-contacts-in-series',
  'open-contacts-in-parallel',
  'supervised-contact',
  'touch-plate',
  'touch-probe',
  'stop-status',
  'door-status',
] as const;
export type WiringName = (typeof wiringNames)[number];

/** What the input makes of its pin. The thresholds of each are the wiring calculation's business. */
export const inputFamilies = [
  'cmos 5 V',
  'cmos 3.3 V',
  'lvttl',
  'ttl',
  'schmitt',
  'optocoupler loop',
  'IEC 61131-2 type 1',
  'IEC 61131-2 type 2',
  'IEC 61131-2 type 3',
  'window',
] as const;
export type InputFamily = (typeof inputFamilies)[number];

/** What the contact, closed, joins the signal to. */
export type Joins = '0 V' | '+';
/** What a person works: a plain contact, a sensor's output, or the work itself. */
export type Device =
  | 'contact'
  | 'stop contact'
  | 'door contact'
  | 'npn'
  | 'pnp'
  | 'two-wire'
  | 'hall'
  | 'optical'
  | 'touch plate'
  | 'touch probe';
/** What stands between the terminal and what is read. */
export type Stage = 'pull-up' | 'pull-down' | 'divider' | 'fed optocoupler' | 'drawn optocoupler' | 'window';
