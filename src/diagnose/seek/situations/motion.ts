import { anywhere, noTrip, onSpindleAxis, type Situation, wholeCycle } from './situation.ts';

/** What goes wrong on the way: distances, speeds, steps, order, and what the stream never showed. */
export const motionSituations: readonly Situation[] = [
  {
    name: 'seek-too-short',
    finding: 'no-trip',
    applies: anywhere,
    pattern: {
      ...noTrip,
      standing: ['short-of-it'],
      endedBy: ['itself'],
      way: ['toward'],
      lengths: ['equal'],
      tool: ['as-commanded'],
      movedAxis: ['this'],
      reached: ['no'],
    },
  },
  {
    name: 'loses-steps',
    finding: 'scattered-trips',
    applies: anywhere,
    pattern: {
      ...wholeCycle,
      way: ['toward'],
      trips: ['scattered', 'drifting'],
      tool: ['as-commanded'],
      reached: ['yes'],
    },
  },
  {
    name: 'scale-off',
    finding: 'scale-off',
    applies: anywhere,
    pattern: {
      ...wholeCycle,
      way: ['toward'],
      trips: ['together'],
      tool: ['as-commanded'],
      reached: ['yes'],
      measured: ['scaled'],
    },
  },
  {
    name: 'seeks-the-work',
    finding: 'heads-for-work',
    applies: onSpindleAxis,
    pattern: {
      forWork: ['yes'],
      trip: ['own', 'far-end', 'other-axis', 'none', 'between-reports'],
    },
  },
  {
    name: 'touches-the-work',
    finding: undefined,
    applies: (roles) => onSpindleAxis(roles) && roles.probes.length > 0,
    pattern: { forWork: ['yes'], trip: ['probe'] },
  },
  { name: 'wrong-order', finding: 'axis-order', applies: anywhere, pattern: { order: ['wrong'] } },
  {
    name: 'crawls',
    finding: 'crawls',
    applies: anywhere,
    pattern: { speed: ['crawl'], way: ['toward', 'away'] },
  },
  { name: 'not-reported', finding: undefined, applies: anywhere, pattern: { seen: ['gap'] } },
  {
    name: 'overruns',
    finding: 'overruns',
    applies: anywhere,
    pattern: {
      ...wholeCycle,
      runOn: ['beyond-overtravel'],
      tool: ['as-commanded'],
      way: ['toward'],
      trips: ['together', 'drifting'],
      reached: ['yes'],
    },
  },
  {
    name: 'sags-at-start',
    finding: undefined,
    applies: onSpindleAxis,
    pattern: {
      ...wholeCycle,
      way: ['toward'],
      trips: ['together'],
      tool: ['as-commanded'],
      reached: ['yes'],
      sagged: ['yes'],
    },
  },
  {
    name: 'reference-lost',
    finding: 'reference-lost',
    applies: anywhere,
    pattern: { since: ['stopped-or-lost'] },
  },
  {
    name: 'zero-not-set',
    finding: 'zero-not-set',
    applies: anywhere,
    pattern: { ...wholeCycle, zero: ['not-set'], way: ['toward', 'away'] },
  },
];
