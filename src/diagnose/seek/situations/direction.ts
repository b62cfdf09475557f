import { anywhere, noTrip, type Situation, wholeCycle } from './situation.ts';

/**
 * Commanded sign, direction setting, motor leads and drive each flip the way; only their product shows. Homing works where that product fits
 * the end of the switch: one error runs away from it, two cancel, and the parts come out mirrored.
 */
export const directionSituations: readonly Situation[] = [
  {
    name: 'healthy',
    finding: undefined,
    applies: anywhere,
    pattern: {
      ...wholeCycle,
      way: ['toward'],
      edges: ['clean', 'several'],
      trips: ['together'],
      bothSides: ['one-place'],
      sides: ['both'],
      place: ['agrees'],
      tool: ['as-commanded'],
      movedAxis: ['this'],
      reached: ['yes'],
      buzzed: ['no'],
      cameBack: ['yes'],
      racked: ['no'],
      measured: ['true'],
      sagged: ['no'],
    },
  },
  {
    name: 'mirrored',
    finding: 'mirrored',
    applies: anywhere,
    // Where the file's end is mirrored too, it seems to go toward it; the place, or the eye, says otherwise.
    pattern: {
      ...wholeCycle,
      way: ['away', 'toward'],
      trips: ['together'],
      place: ['contradicts'],
      tool: ['opposite'],
      movedAxis: ['this'],
      reached: ['yes'],
      buzzed: ['no'],
      cameBack: ['yes'],
    },
  },
  {
    name: 'direction-inverted',
    finding: 'no-trip',
    applies: anywhere,
    pattern: {
      ...noTrip,
      standing: ['short-of-it'],
      way: ['toward'],
      trip: ['none', 'far-end'],
      tool: ['opposite'],
      movedAxis: ['this'],
      reached: ['no'],
    },
  },
  {
    name: 'motor-coil-reversed',
    finding: 'no-trip',
    applies: anywhere,
    pattern: {
      ...noTrip,
      standing: ['short-of-it'],
      way: ['toward'],
      trip: ['none', 'far-end'],
      tool: ['opposite'],
      movedAxis: ['this'],
      reached: ['no'],
    },
  },
  {
    name: 'seeks-wrong-end',
    finding: 'heads-away',
    applies: anywhere,
    pattern: {
      ...noTrip,
      standing: ['short-of-it'],
      way: ['away'],
      trip: ['none', 'far-end'],
      tool: ['as-commanded'],
      movedAxis: ['this'],
      reached: ['no'],
    },
  },
  {
    name: 'homes-at-far-end',
    finding: 'mirrored',
    applies: ({ sharesEnds }) => sharesEnds,
    pattern: {
      ...wholeCycle,
      way: ['toward', 'away'],
      trips: ['together'],
      place: ['contradicts'],
      tool: ['opposite'],
      reached: ['yes'],
      cameBack: ['yes'],
    },
  },
  {
    name: 'motor-stutters',
    finding: 'no-trip',
    applies: anywhere,
    pattern: {
      ...noTrip,
      standing: ['short-of-it'],
      way: ['toward', 'away'],
      tool: ['none'],
      buzzed: ['yes'],
      reached: ['no'],
    },
  },
  {
    name: 'motor-stands-still',
    finding: 'no-trip',
    applies: anywhere,
    pattern: {
      ...noTrip,
      standing: ['short-of-it'],
      way: ['toward', 'away'],
      tool: ['none'],
      buzzed: ['no'],
      reached: ['no'],
    },
  },
];
