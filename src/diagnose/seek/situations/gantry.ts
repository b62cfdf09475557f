import { onGantry, type Situation, wholeCycle } from './situation.ts';

/** Two motors on one axis, and axes that turn. */
export const gantrySituations: readonly Situation[] = [
  {
    name: 'gantry-motors-fight',
    finding: 'gantry',
    applies: onGantry,
    pattern: { ...wholeCycle, way: ['toward'], square: ['kept', 'moved'], racked: ['yes'] },
  },
  {
    name: 'gantry-sides-crossed',
    finding: 'gantry',
    applies: (roles) => onGantry(roles) && roles.home.length > 1,
    pattern: { atStart: ['free'], trip: ['own'], sides: ['both', 'one'], racked: ['yes'] },
  },
  {
    name: 'gantry-switch-dead',
    finding: 'gantry',
    applies: (roles) => onGantry(roles) && roles.home.length > 1,
    pattern: {
      atStart: ['free'],
      trip: ['own'],
      sides: ['one'],
      zero: ['not-set'],
      racked: ['yes', 'no'],
    },
  },
  {
    name: 'gantry-inputs-joined',
    finding: 'gantry',
    applies: (roles) => onGantry(roles) && roles.home.length > 1,
    pattern: { trip: ['own'], sides: ['same-report'], map: ['unproved'] },
  },
  {
    name: 'gantry-offset-moved',
    finding: 'gantry',
    applies: (roles) => onGantry(roles) && roles.home.length > 1,
    pattern: {
      ...wholeCycle,
      way: ['toward'],
      sides: ['both'],
      trips: ['together', 'scattered', 'drifting'],
      square: ['moved'],
    },
  },
  {
    name: 'rotary-either-side',
    finding: 'scattered-trips',
    applies: ({ axis }) => axis.kind === 'rotary',
    pattern: {
      ...wholeCycle,
      way: ['toward', 'away'],
      zero: ['set', 'not-set'],
      bothSides: ['two-places'],
    },
  },
];
