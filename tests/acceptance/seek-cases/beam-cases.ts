import type { SeekCase } from './seek-case.ts';

const notSent = 'homing Y: not-tested seek-not-proved';
const unproved = ['seek Y: not-tested input-unproved', notSent];

/** A beam that two motors drive, and an axis that turns. */
export const beamCases: readonly SeekCase[] = [
  {
    name: 'the two motors of a beam work against each other',
    plays: [
      {
        because: 'One side turns the other way: the beam racks in the first millimetres.',
        fault: 'side-reversed:Y',
        found: ['seek Y: failed gantry(gantry-motors-fight, gantry-offset-moved)', notSent],
      },
      {
        because: 'One side has no power and is dragged along.',
        fault: 'side-off:Y',
        found: ['seek Y: failed gantry(gantry-motors-fight, gantry-offset-moved)', notSent],
      },
    ],
  },
  {
    name: 'the switches of a beam’s two sides are exchanged',
    plays: [
      {
        because: 'The presses find it, and nothing moves.',
        on: 'portal',
        fault: 'crossed:y-left,y-right',
        found: [
          'press y-left: failed answers-elsewhere',
          'press y-right: failed answers-elsewhere',
          ...unproved,
        ],
      },
      {
        because:
          'Exchanged after the presses: each side waits for the other’s switch, and the beam is pulled askew.',
        on: 'portal',
        later: 'crossed:y-left,y-right',
        found: ['homing Y: failed gantry(gantry-sides-crossed)'],
      },
    ],
  },
  {
    name: 'the switch of one side of a beam is dead',
    plays: [
      {
        because: 'Its press finds it, and nothing moves.',
        on: 'portal',
        fault: 'welded:y-right',
        found: ['press y-right: failed never-changes', ...unproved],
      },
      {
        because: 'Welded after the presses: one side waits, the other goes on, which is sounded.',
        on: 'portal',
        later: 'welded:y-right',
        found: ['homing Y: failed gantry(gantry-sides-crossed, gantry-switch-dead)'],
        dangers: ['Y overruns'],
      },
    ],
  },
  {
    name: 'both sides of a beam are joined on one wire',
    plays: [
      {
        because: 'Closed contacts side by side: pressed alone neither opens the line, and nothing moves.',
        on: 'portal',
        fault: 'shorted-together:y-left,y-right',
        found: ['press y-left: failed never-changes', 'press y-right: failed never-changes', ...unproved],
      },
      {
        because: 'Joined after the presses: both trip in one report, as on a beam that is square.',
        on: 'portal',
        later: 'shorted-together:y-left,y-right',
        found: [],
      },
    ],
  },
  {
    name: 'one side of a beam stands ahead of the other, or loses steps against it',
    plays: [
      {
        because: 'Out of square from the start: the person sees it at the first seek.',
        fault: 'side-ahead:Y',
        found: ['seek Y: failed gantry(gantry-motors-fight, gantry-offset-moved)', notSent],
      },
      {
        because: 'A homing squares it; that the sides trip apart again in the next shows steps lost since.',
        fault: 'side-loses-steps:Y',
        found: ['homing Y: failed gantry(gantry-motors-fight, gantry-sides-crossed, gantry-offset-moved)'],
      },
    ],
  },
  {
    name: 'a turning axis comes to its mark from either side',
    plays: [
      {
        because: 'It takes the shorter way, which is not the way the file has it turn.',
        fault: 'shorter-way:A',
        only: ['z-a-home/index', 'stop'],
        found: [
          'seek A: failed heads-away(seeks-wrong-end, rotary-either-side)',
          'homing A: not-tested seek-not-proved',
        ],
        dangers: ['A heads-away'],
      },
    ],
  },
];
