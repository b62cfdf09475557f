/** The checks of the house. Those without a line in the registry are reported as not tested. */
export const checkNames = [
  'rest',
  'press',
  'open-wire',
  'stop',
  'seek',
  'homing',
  'repeat',
  'stopping',
  'envelope',
  'scale',
  'soak',
] as const;
export type CheckName = (typeof checkNames)[number];
