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

/** `troubleshoot`, the search for the cause on one input, runs and is judged like a check, but no commissioning asks for it. */
export const everyCheck = [...checkNames, 'troubleshoot'] as const;
export type CheckName = (typeof everyCheck)[number];
