import { home, onX, xSwitches } from '../played.ts';
import { again, blind, type Case, rest, still } from './parts.ts';

/** What happened on the way, before and after. */
export const wayCases: readonly Case[] = [
  {
    name: 'a number set where it stood',
    played: {
      axis: 'X',
      runs: [
        onX({
          start: 17,
          plan: [rest, { activity: 'homing', wait: 50 }, { set: 0, activity: 'still' }, rest],
        }),
      ],
    },
    left: ['zeroed-in-place'],
  },
  {
    name: 'blocked by a limit of another axis',
    played: {
      axis: 'X',
      runs: [onX({ plan: [rest, still()], switches: { ...xSwitches, 'z-top': { when: () => true } } })],
    },
    left: ['blocked-elsewhere'],
  },
  {
    name: 'ends after the same way from unlike starts',
    played: {
      axis: 'X',
      runs: [
        onX({ stands: 200, plan: blind(-1, 50) }),
        onX({ stands: 150, start: -50, plan: blind(-1, 50), seed: 2 }),
      ],
    },
    left: [
      'direction-inverted',
      'motor-coil-reversed',
      'motor-stutters',
      'motor-stands-still',
      'beyond-the-dog',
      'trip-not-taken',
      'seek-too-short',
    ],
  },
  {
    name: 'loses steps from homing to homing',
    played: { axis: 'X', runs: [onX(), ...[1, 2, 3].map((i) => again({ stands: 0.4, seed: i + 1 }))] },
    left: ['loses-steps', 'switch-wanders'],
  },
  {
    name: 'crawls',
    played: { axis: 'X', runs: [onX({ stands: 1, plan: blind(-1, 2, 0.4) })] },
    left: [
      'direction-inverted',
      'motor-coil-reversed',
      'motor-stutters',
      'motor-stands-still',
      'beyond-the-dog',
      'trip-not-taken',
      'seek-too-short',
      'crawls',
    ],
  },
  {
    name: 'homes while its position stands still in the stream',
    played: {
      axis: 'X',
      runs: [
        onX({
          start: 17,
          plan: [rest, { activity: 'homing', wait: 4000 }, { set: 0, activity: 'still' }, rest],
        }),
      ],
    },
    left: ['not-reported'],
  },
  {
    name: 'runs past what its switch may be driven',
    // 45 mm/s and 300 mm/s2: 3.4 mm past the trip, where 3 mm are allowed.
    played: { axis: 'X', runs: [onX({ plan: home(-1, 'x-home', { approach: 45, backOff: 6 }), period: 5 })] },
    left: ['mirrored', 'noise-trip', 'overruns'],
  },
  {
    name: 'was homed and then stopped in the middle of a move',
    played: { axis: 'X', runs: [onX()], more: { lostSince: true } },
    left: ['mirrored', 'noise-trip', 'reference-lost'],
  },
  {
    name: 'homes before Z is up',
    played: { axis: 'X', runs: [onX()], more: { orderWrong: true } },
    left: ['mirrored', 'noise-trip', 'wrong-order'],
  },
  {
    name: 'ends without a zero',
    played: { axis: 'X', runs: [onX({ plan: home(-1, 'x-home').filter((part) => part.set === undefined) })] },
    left: ['noise-trip', 'zero-not-set'],
  },
];
