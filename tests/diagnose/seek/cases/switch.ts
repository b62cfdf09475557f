import { home, onX, xSwitches } from '../played.ts';
import { blind, type Case, dead, fault, noisy, rest, toSwitch } from './parts.ts';

/** What happened at the switch. */
export const switchCases: readonly Case[] = [
  {
    name: 'begins on its switch and comes off it',
    played: {
      axis: 'X',
      runs: [
        onX({
          stands: -2.2,
          plan: [
            rest,
            { activity: 'homing', by: 3, speed: 15 },
            { wait: 150 },
            ...home(-1, 'x-home').slice(1),
          ],
        }),
      ],
    },
    left: ['stands-on-switch'],
  },
  {
    name: 'begins with its input active and never sees it free',
    played: {
      axis: 'X',
      runs: [
        onX({
          switches: { ...xSwitches, 'x-home': { when: () => true } },
          plan: [rest, { activity: 'homing', by: 3, speed: 5 }, fault],
        }),
      ],
    },
    left: ['stands-on-switch', 'input-stuck'],
  },
  {
    name: 'trips and does not turn',
    played: { axis: 'X', runs: [onX({ plan: [rest, toSwitch(), fault] })] },
    left: ['no-reversal'],
  },
  {
    name: 'goes on past its trip',
    played: { axis: 'X', runs: [onX({ plan: blind(-1, 40) })] },
    left: ['no-reversal'],
  },
  {
    name: 'turns back by command and its switch stays operated',
    played: { axis: 'X', runs: [onX({ plan: [rest, toSwitch(), { by: 0.4, speed: 15 }, fault] })] },
    left: ['does-not-turn-back', 'does-not-clear'],
  },
  {
    name: 'finds its switch once and not the second time',
    played: {
      axis: 'X',
      runs: [onX({ plan: [rest, toSwitch(), { by: 2, speed: 15 }, { by: -1, speed: 1 }, fault] })],
    },
    left: ['trip-lost-to-bounce', 'noise-trip'],
  },
  {
    name: 'turns and is zeroed without a trip in any report',
    played: {
      axis: 'X',
      runs: [
        onX({
          switches: dead,
          plan: [
            rest,
            { activity: 'homing', way: -1, speed: 15, most: 22 },
            { by: 2, speed: 15 },
            { set: 0, activity: 'still' },
            rest,
          ],
        }),
      ],
    },
    left: ['trip-between-reports'],
  },
  {
    name: 'trips wherever noise strikes',
    played: {
      axis: 'X',
      runs: [noisy(12, 1), noisy(17, 2, 12), noisy(7, 3, 17)],
    },
    left: ['noise-trip', 'loses-steps', 'switch-wanders'],
  },
  {
    name: 'backs off into the switch at the other end',
    played: {
      axis: 'X',
      runs: [
        onX({
          switches: { ...xSwitches, 'x-far': { actuates: -0.5, frees: -0.8, outwards: 1 } },
          stands: -1,
          start: -1,
          plan: home(-1, 'x-home'),
        }),
      ],
    },
    left: ['backs-into-a-switch'],
  },
];
