/** Everything a person may be asked to do or look at while a cause is sought; what each tells is computed elsewhere. */
export const deedNames = [
  'rest',
  'press',
  'tap',
  'carriage',
  'neighbour',
  'tug',
  'flex',
  'unplug-controller',
  'unplug-switch',
  'link-controller',
  'link-switch',
  'lamp',
  'lever',
  'face',
  'settings',
  'blades',
  'gap',
  'bracket',
  'clip',
  'ohms-signal-core',
  'ohms-common-core',
  'ohms-signal-to-return',
  'ohms-signal-to-plus',
  'ohms-contact-closed',
  'ohms-contact-open',
  'ohms-pull',
  'volts-terminal-closed',
  'volts-terminal-open',
  'volts-sensor-supply',
  'volts-sensor-output',
  'ohms-returns',
  'volts-coupler-common',
  'amps-closed',
  'amps-open',
  'drives',
  'spindle',
  'axis',
] as const;
export type DeedName = (typeof deedNames)[number];

/** Where the tips of a meter go, one place a deed. */
export type MeterDeed = Extract<DeedName, `ohms-${string}` | `volts-${string}` | `amps-${string}`>;

/** Deeds that need a meter; no place where a length is measured is one of them. */
export const isMeterDeed = (where: string): where is MeterDeed => meterDeeds.has(where);

const meterDeeds: ReadonlySet<string> = new Set(
  deedNames.filter((name) => /^(?:ohms|volts|amps)-/.test(name)),
);
/** Questions to the person's eyes that take yes or no. */
export type LookDeed = 'lever' | 'face' | 'settings' | 'blades' | 'gap' | 'bracket' | 'clip';
/** Done by hand, or by the person's own control, while the input is watched. */
export type WatchedDeed = 'tap' | 'carriage' | 'tug' | 'flex' | 'drives' | 'spindle' | 'axis';
