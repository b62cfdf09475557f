import { home, onX } from '../played.ts';
import { blind, type Case, dead, three } from './parts.ts';

/** Where the tool went, against where it was commanded. */
export const directionCases: readonly Case[] = [
  {
    name: 'a sound seek',
    played: { axis: 'X', runs: [onX()] },
    left: ['healthy', 'mirrored', 'noise-trip', 'loses-steps', 'switch-wanders', 'scale-off'],
  },
  {
    name: 'three sound seeks of a switch that is alone on its input and of known side',
    played: { axis: 'X', runs: three() },
    left: ['healthy', 'scale-off'],
  },
  {
    name: 'the direction setting, or one motor lead pair, reversed: away, and commanded the right way',
    played: { axis: 'X', runs: [onX({ sense: -1, plan: blind(-1, 60) })] },
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
    name: 'the same, up to the switch at the far end',
    played: { axis: 'X', runs: [onX({ sense: -1, stands: 270, plan: blind(-1, 60) })] },
    left: ['direction-inverted', 'motor-coil-reversed'],
  },
  {
    name: 'the wrong end set: away, and commanded so',
    played: { axis: 'X', runs: [onX({ plan: blind(1, 60) })] },
    left: ['seeks-wrong-end', 'motor-stutters', 'motor-stands-still'],
  },
  {
    name: 'both set wrong: homing works',
    played: { axis: 'X', runs: [onX({ sense: -1, plan: home(1, 'x-home') })] },
    left: ['mirrored', 'noise-trip'],
  },
  {
    name: 'both set wrong, three times: the place says so',
    played: { axis: 'X', runs: three({ sense: -1, plan: home(1, 'x-home') }) },
    left: ['mirrored'],
  },
  {
    name: 'input plugs crossed and never pressed before',
    played: {
      axis: 'X',
      mapProved: false,
      runs: [onX({ plan: blind(-1, 30), switches: { ...dead, 'z-top': { actuates: 5, outwards: -1 } } })],
    },
    left: ['inputs-crossed', 'motors-crossed'],
  },
  {
    name: 'motor plugs crossed, or a wire exchanged since the presses',
    played: {
      axis: 'X',
      runs: [onX({ plan: blind(-1, 30), switches: { ...dead, 'z-top': { actuates: 5, outwards: -1 } } })],
    },
    left: ['inputs-crossed', 'motors-crossed'],
  },
];
