import { home } from '../played.ts';
import { blind, type Case, fault, onY, onZ, rest, still, uSwitches, ySwitches } from './parts.ts';

/** Axes with a nature of their own. */
export const axesCases: readonly Case[] = [
  {
    name: 'Z that homes to its top',
    played: {
      axis: 'Z',
      runs: [onZ(), onZ({ start: 0, stands: 0, seed: 2 }), onZ({ start: 0, stands: 0, seed: 3 })],
    },
    left: ['healthy', 'scale-off', 'sags-at-start'],
  },
  {
    name: 'Z that seeks downwards',
    played: { axis: 'Z', runs: [onZ({ plan: blind(-1, 15) })] },
    left: ['seeks-wrong-end', 'motor-stutters', 'motor-stands-still', 'seeks-the-work'],
  },
  {
    name: 'Z that goes down to touch the work',
    played: {
      axis: 'Z',
      runs: [
        onZ({
          plan: [
            rest,
            { activity: 'moving', way: -1, speed: 5, until: 'probe', most: 30 },
            { by: 2, speed: 5 },
            still(),
          ],
        }),
      ],
    },
    left: ['touches-the-work'],
  },
  {
    name: 'two motors, two switches, one after the other',
    played: {
      axis: 'Y',
      runs: [onY(), onY({ start: 0, stands: -0.5, seed: 2 }), onY({ start: 0, stands: -0.5, seed: 3 })],
    },
    left: ['healthy', 'scale-off', 'gantry-motors-fight', 'gantry-sides-crossed'],
  },
  {
    name: 'two motors, one switch never answers',
    played: {
      axis: 'Y',
      runs: [
        onY({
          plan: [rest, { activity: 'homing', way: -1, speed: 15, until: 'y-right', most: 40 }, fault],
          switches: { ...ySwitches(), 'y-right': { when: () => false } },
        }),
      ],
    },
    left: ['gantry-sides-crossed', 'gantry-switch-dead'],
  },
  {
    name: 'two motors, both inputs in the very same report, never pressed one by one',
    played: { axis: 'Y', mapProved: false, runs: [onY({ switches: ySwitches(0) })] },
    left: [
      'healthy',
      'mirrored',
      'noise-trip',
      'loses-steps',
      'switch-wanders',
      'scale-off',
      'gantry-motors-fight',
      'gantry-inputs-joined',
    ],
  },
  {
    name: 'a turning axis that meets its dog from either side',
    played: {
      axis: 'A',
      runs: [0, 12, 0, 12].map((side, i) => ({
        plan: home(1, 'a-dog', { value: 0 }).filter((part) => part.set === undefined),
        stands: -20,
        seed: i + 1,
        switches: { 'a-dog': { actuates: side, frees: side - 0.4, outwards: 1 } },
      })),
    },
    left: ['noise-trip', 'zero-not-set', 'rotary-either-side'],
  },
  {
    name: 'one input with a switch at either end',
    played: {
      axis: 'U',
      runs: [
        { plan: home(-1, 'u-ends'), stands: 20, switches: uSwitches },
        ...[2, 3].map((seed) => ({
          plan: home(-1, 'u-ends'),
          stands: 0,
          start: 0,
          seed,
          switches: uSwitches,
        })),
      ],
    },
    left: ['healthy', 'mirrored', 'homes-at-far-end', 'scale-off', 'overruns'],
  },
];
