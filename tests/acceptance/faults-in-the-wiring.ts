import {
  elsewhere,
  flickers,
  neverChanges,
  openAlready,
  type PlantedFault,
  reversed,
  silent,
  stuckActive,
} from './told.ts';

/**
 * The machine is sound but for one fault: every contact normally closed to ground under a pull-up, every setting "active when
 * open". Three digits are what an input reports at rest, pressed and unplugged, 1 for active. An unplugged line is an open
 * one, so the third digit is 1 unless the setting is turned or the line goes on conducting past the plug.
 */
export const contactsAndWires: readonly PlantedFault[] = [
  {
    plant: 'normally-open:x-far',
    because:
      'Open at rest and the setting fits: 0 1 0. It answers a press; open as at rest, a break goes unnoticed.',
    tells: { 'open-wire': { 'x-far': ['limited', 'break-undetected', 'declared-otherwise'] } },
  },
  {
    plant: 'wrong-contact-declared:x-far',
    because:
      'Open at rest under a setting for the other pair of blades: 1 0 1. Reversed, and a break reads as at rest.',
    tells: {
      press: { 'x-far': reversed },
      'open-wire': { 'x-far': ['failed', 'polarity-reversed', 'break-undetected', 'declared-otherwise'] },
    },
  },
  {
    plant: 'welded:x-far',
    because: 'Conducts pressed or not, and opens at the plug: 0 0 1. The wire lives, the switch does not.',
    tells: { press: { 'x-far': neverChanges }, 'open-wire': { 'x-far': neverChanges } },
  },
  {
    plant: 'never-makes:x-far',
    because: 'Never conducts: 1 1 1, and the plug opens what is open already.',
    tells: { press: { 'x-far': stuckActive }, 'open-wire': { 'x-far': openAlready } },
  },
  {
    plant: 'bent-lever:x-far',
    because: 'Always operated, so open: 1 1 1. Nothing is seen standing on it.',
    tells: { press: { 'x-far': stuckActive }, 'open-wire': { 'x-far': openAlready } },
  },
  {
    plant: 'sticks:x-far',
    because: 'Answers the hand and stays operated when it lets go; freed, the row is 0 1 1.',
    tells: { press: { 'x-far': ['failed', 'sticks'] } },
  },
  {
    plant: 'slips:x-far',
    because:
      'The first and the third push move it, the second slips off; the push after the plug is back, the fifth, moves it.',
    tells: { press: { 'x-far': ['failed', 'misses-presses'] } },
  },
  {
    plant: 'chatters:x-far',
    because: 'Each change bounces for a tenth of a second, slower than the reports; a plug does not bounce.',
    tells: { press: { 'x-far': ['limited', 'chatters'] } },
  },
  {
    plant: 'held-at-rest:x-far',
    because:
      'Active because the axis stands on it: the person sees that, moves it off, and then all is sound.',
    tells: {},
  },
  {
    plant: 'broken-wire:y-far',
    because: 'Open in the cable whatever is done at the switch: 1 1 1.',
    tells: { press: { 'y-far': stuckActive }, 'open-wire': { 'y-far': openAlready } },
  },
  {
    plant: 'crossed:y-home,z-home',
    because: 'Each switch works the other input, press and plug alike; each row by itself is 0 1 1.',
    tells: {
      press: { 'y-home': elsewhere, 'z-home': elsewhere },
      'open-wire': { 'y-home': elsewhere, 'z-home': elsewhere },
    },
  },
  {
    plant: 'shifted-plug:P1',
    because:
      'Pins 1 and 2 of three answer on the input behind their own. The third wire hangs in the air, and its input, worked by the second switch, stays at rest: 0 0 0.',
    tells: {
      press: {
        'x-home': ['failed', 'answers-elsewhere', 'shifted-plug'],
        'x-far': ['failed', 'answers-elsewhere', 'shifted-plug'],
        'y-home': neverChanges,
      },
      'open-wire': { 'x-home': elsewhere, 'x-far': elsewhere, 'y-home': silent },
    },
  },
  {
    plant: 'shorted-together:x-far,y-far',
    because:
      'Either switch grounds both lines: as long as one conducts, neither input moves: 0 0 0 for both.',
    tells: {
      press: { 'x-far': neverChanges, 'y-far': neverChanges },
      'open-wire': { 'x-far': silent, 'y-far': silent },
    },
  },
  {
    plant: 'chained-return:x-home,x-far',
    because: 'The first switch opens both lines, the second its own alone; each row by itself is 0 1 1.',
    tells: { press: { 'x-home': ['failed', 'moves-together'] } },
  },
  {
    plant: 'flickers:x-far',
    because:
      'Opens for moments by itself: seen with hands off, and from then on no change of it is an answer.',
    tells: { rest: { 'x-far': flickers }, press: { 'x-far': flickers }, 'open-wire': { 'x-far': flickers } },
  },
  {
    plant: 'floating:x-far',
    because:
      'Held while its contact conducts; opened, nothing holds it: it wanders under every press and with the plug out.',
    tells: {
      press: { 'x-far': ['limited', 'chatters'] },
      'open-wire': { 'x-far': ['failed', 'floats-open'] },
    },
  },
  {
    plant: 'normally-open:stop',
    because: '0 1 0 on a stop: it works until its wire breaks, and then it stops nothing.',
    tells: { 'open-wire': { stop: ['failed', 'break-undetected', 'declared-otherwise'] } },
  },
  {
    plant: 'normally-open:doors/flap',
    because:
      'One normally open contact in the chain, set to fit: 0 1 0 for it. The chain is open already when the other one opens: 0 0 0.',
    tells: {
      press: { 'doors/hatch': neverChanges },
      'open-wire': {
        'doors/flap': ['failed', 'break-undetected', 'declared-otherwise'],
        'doors/hatch': silent,
      },
    },
  },
  {
    plant: 'welded:doors/hatch',
    because: 'One of the chain conducts always: 0 0 1 for it, the other one is sound.',
    tells: { press: { 'doors/hatch': neverChanges }, 'open-wire': { 'doors/hatch': neverChanges } },
  },
  {
    plant: 'broken-wire:doors',
    because: 'The chain is open for good: 1 1 1, and no switch in it can be told from the other.',
    tells: {
      press: {
        'doors/flap': ['failed', 'stuck-active', 'chain-blocked'],
        'doors/hatch': ['failed', 'stuck-active', 'chain-blocked'],
      },
      'open-wire': { 'doors/flap': openAlready, 'doors/hatch': openAlready },
    },
  },
  {
    plant: 'crossed:probe,stop',
    because:
      'The button works the input of the probe: whoever listens on the input of the stop hears nothing of it.',
    tells: {
      press: { probe: elsewhere, stop: elsewhere },
      'open-wire': { probe: elsewhere, stop: elsewhere },
      stop: { stop: elsewhere },
    },
  },
  {
    plant: 'broken-wire:stop',
    because: 'Open for good: 1 1 1. The power goes by a circuit of its own, the status does not move.',
    tells: {
      press: { stop: stuckActive },
      'open-wire': { stop: openAlready },
      stop: { stop: ['failed', 'status-not-following'] },
    },
  },
  {
    plant: 'flickers:stop',
    because: 'Opens for moments by itself: none of its changes says that the button was pressed.',
    tells: {
      rest: { stop: flickers },
      press: { stop: flickers },
      'open-wire': { stop: flickers },
      stop: { stop: flickers },
    },
  },
];
