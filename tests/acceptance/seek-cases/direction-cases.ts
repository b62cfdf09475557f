import type { SeekCase } from './seek-case.ts';

const threeAxes = ['x-home', 'y-home', 'z-home', 'stop'];
const notSent = 'homing X: not-tested seek-not-proved';
const noFrame = 'seek axes: inconclusive direction-not-known';

/** Which way a command takes the tool. */
export const directionCases: readonly SeekCase[] = [
  {
    name: 'a sound axis',
    plays: [
      { because: 'There is nothing to find.', only: threeAxes, found: [] },
      {
        because: 'X and Y home at the same time: each comes to its own switch.',
        only: threeAxes,
        atOnce: true,
        found: [],
      },
      {
        because:
          'Two motors, two switches a little apart: the side that waits for the other does not push on.',
        on: 'portal',
        only: ['x-ends', 'y-left', 'y-right', 'z-a-home', 'stop'],
        found: [],
      },
    ],
  },
  {
    name: 'its direction is set the wrong way, its switch where it should be',
    plays: [
      {
        because: 'Sent to its switch the tool goes away from it; the frame has one axis turned round.',
        fault: 'direction-inverted:X',
        only: threeAxes,
        found: [
          'seek X: failed heads-away(direction-inverted, motor-coil-reversed)',
          'seek axes: failed mirrored',
          notSent,
        ],
        dangers: ['X heads-away'],
      },
    ],
  },
  {
    name: 'the wrong end is set to be sought',
    plays: [
      {
        because: 'The tool goes where it is commanded: to the other end. Its frame is as it should be.',
        fault: 'home-end-wrong:X',
        only: threeAxes,
        found: ['seek X: failed heads-away(seeks-wrong-end)', notSent],
        dangers: ['X heads-away'],
      },
    ],
  },
  {
    name: 'direction and end are both set wrong',
    plays: [
      {
        because: 'Two wrongs cancel at the switch, so that no alarm may come; every part is mirrored.',
        fault: 'mirrored:X',
        only: threeAxes,
        found: ['seek X: failed mirrored(mirrored)', 'seek axes: failed mirrored', notSent],
      },
    ],
  },
  {
    name: 'one winding of its motor is connected the other way round',
    plays: [
      {
        because: 'It turns the other way, like one whose setting is wrong.',
        fault: 'leads-turned:X',
        only: threeAxes,
        found: [
          'seek X: failed heads-away(direction-inverted, motor-coil-reversed)',
          'seek axes: failed mirrored',
          notSent,
        ],
        dangers: ['X heads-away'],
      },
    ],
  },
  {
    name: 'one winding of its motor is open',
    plays: [
      {
        because: 'The count goes on, the motor buzzes and nothing moves.',
        fault: 'winding-open:X',
        only: threeAxes,
        found: ['seek X: failed no-trip(motor-stutters)', noFrame, notSent],
      },
    ],
  },
  {
    name: 'the wires of two switches are exchanged',
    plays: [
      {
        because: 'The presses find it, and nothing moves.',
        fault: 'crossed:x-home,y-home',
        only: ['x-home', 'y-home', 'stop'],
        found: [
          'press x-home: failed answers-elsewhere',
          'press y-home: failed answers-elsewhere',
          'seek X: not-tested input-unproved',
          'seek Y: not-tested input-unproved',
          notSent,
          'homing Y: not-tested seek-not-proved',
        ],
      },
      {
        because:
          'Exchanged after the presses: X was seen to move itself, and Y’s input answers at its switch.',
        later: 'crossed:x-home,y-home',
        found: ['seek X: failed wrong-switch(inputs-crossed)', notSent],
        dangers: ['X wrong-switch'],
      },
    ],
  },
  {
    name: 'the plugs of two motors are exchanged',
    plays: [
      {
        because: 'Each command moves the other axis: two rows of the frame are exchanged, which mirrors it.',
        fault: 'motors-crossed:X,Y',
        only: threeAxes,
        found: [
          'seek X: failed other-axis-moves(motors-crossed)',
          'seek Y: failed other-axis-moves(motors-crossed)',
          'seek axes: failed other-axis-moves(motors-crossed) other-axis-moves(motors-crossed)',
          notSent,
          'homing Y: not-tested seek-not-proved',
        ],
      },
    ],
  },
  {
    name: 'its motor gets no power',
    plays: [
      {
        because: 'The count goes on, nothing moves and nothing is heard.',
        fault: 'driver-off:X',
        only: threeAxes,
        found: ['seek X: failed no-trip(motor-stands-still)', noFrame, notSent],
      },
      {
        because: 'A motor that turns an open coupling is as still to the eye that looks at the axis.',
        fault: 'uncoupled:X',
        found: ['seek X: failed no-trip(motor-stands-still)', notSent],
      },
    ],
  },
  {
    name: 'both ends share one input, and its direction is wrong',
    plays: [
      {
        because: 'Heard in time, it never comes to the wrong corner; a shared input marks no place.',
        on: 'portal',
        fault: 'direction-inverted:X',
        only: ['x-ends', 'stop'],
        found: [
          'seek X: failed heads-away(mirrored, direction-inverted, motor-coil-reversed, homes-at-far-end)',
          notSent,
        ],
        dangers: ['X heads-away'],
      },
      {
        because: 'Nobody heeds the warning: it finds a switch at the wrong corner and is content.',
        on: 'portal',
        fault: 'direction-inverted:X',
        only: ['x-ends', 'stop'],
        stands: { X: 700 },
        hands: { ignoresDanger: true },
        found: ['seek X: failed mirrored(mirrored, homes-at-far-end)', notSent],
        dangers: ['X heads-away'],
      },
    ],
  },
  {
    name: 'Z is set to seek down to the work',
    plays: [
      {
        because: 'The first millimetres go down; whether a probe waits there the alarm does not wait to see.',
        fault: 'home-end-wrong:Z',
        only: ['z-home', 'stop'],
        found: [
          'seek Z: failed heads-away(seeks-wrong-end, seeks-the-work, touches-the-work)',
          'homing Z: not-tested seek-not-proved',
        ],
        dangers: ['Z heads-away'],
      },
    ],
  },
  {
    name: 'Z touches the work with a probe instead of seeking its top',
    plays: [
      {
        because: 'Down as well, and stopped before it touches.',
        fault: 'touches-work:Z',
        only: ['z-home', 'stop'],
        found: [
          'seek Z: failed heads-away(seeks-wrong-end, seeks-the-work, touches-the-work)',
          'homing Z: not-tested seek-not-proved',
        ],
        dangers: ['Z heads-away'],
      },
    ],
  },
];
