import {
  neverChanges,
  notEnabled,
  notInStream,
  type PlantedFault,
  reversed,
  type Saying,
  silent,
  type Told,
} from './told.ts';

/** What the controller and its stream do wrong, on a machine whose wires are all sound. */
export const controllersAndStreams: readonly PlantedFault[] = [
  {
    plant: 'polarity-reversed:x-far',
    because: 'Set "active when closed" on a contact closed at rest: 1 0 0.',
    tells: { press: { 'x-far': reversed }, 'open-wire': { 'x-far': reversed } },
  },
  {
    plant: 'polarity-reversed:stop',
    because: '1 0 0 on a stop: its status says "pressed" until it is.',
    tells: { press: { stop: reversed }, 'open-wire': { stop: reversed }, stop: { stop: reversed } },
  },
  {
    plant: 'not-enabled:x-far',
    because: 'The level moves with press and plug, the active value never does.',
    tells: { press: { 'x-far': notEnabled }, 'open-wire': { 'x-far': notEnabled } },
  },
  {
    plant: 'not-enabled:stop',
    because: 'The level follows the button, the controller takes no notice.',
    tells: { press: { stop: notEnabled }, 'open-wire': { stop: notEnabled }, stop: { stop: notEnabled } },
  },
  {
    plant: 'dead-input:x-far',
    because: 'The pin stays as it was: 0 0 0.',
    tells: { press: { 'x-far': neverChanges }, 'open-wire': { 'x-far': silent } },
  },
  {
    plant: 'not-reported:x-far',
    because: 'No report names it: nothing can be said of it at all.',
    tells: {
      rest: { 'x-far': notInStream },
      press: { 'x-far': notInStream },
      'open-wire': { 'x-far': notInStream },
    },
  },
  {
    plant: 'reports-on-release:x-far',
    because: 'Told late, but told: a press when it is over, a pulled plug after 1.2 s; the row is 0 1 1.',
    tells: {},
  },
  {
    plant: 'reports-on-release:stop',
    because: 'A button that stays in is told after 1.2 s: the status follows.',
    tells: {},
  },
  {
    plant: 'halts-at-limit',
    because:
      'Every press of a limit halts the controller, as it should; the halt is cleared, the rows are 0 1 1.',
    tells: {},
  },
  {
    plant: 'restarts-mid-row:x-far',
    because: 'The restart spoils one row; begun anew it is 0 1 1. That the controller restarted is noted.',
    tells: { 'open-wire': { stream: ['proved', 'controller-restarted'] } },
  },
  {
    plant: 'status-block-off',
    because: 'The block conducts whatever the button does, 0 0 1; the power goes by another block.',
    tells: {
      press: { stop: neverChanges },
      'open-wire': { stop: neverChanges },
      stop: { stop: ['failed', 'status-not-following'] },
    },
  },
  {
    plant: 'power-stays-on',
    because: 'The input is perfect, 0 1 1; only a person sees that the drives keep their power.',
    tells: { stop: { stop: ['failed', 'power-stays-on'] } },
  },
  {
    plant: 'restarts-on-unlatch',
    because: 'Input and power are perfect until the button is let out.',
    tells: { stop: { stop: ['failed', 'restarts'] } },
  },
  {
    plant: 'lost-reports',
    because: 'One in twenty is lost, and numbered: every check notes it and no verdict needs the lost ones.',
    tells: everyCheck({ stream: ['proved', 'stream-gaps'] }),
  },
  {
    plant: 'noisy-line',
    because:
      'One in thirty does not add up and is thrown away: every check notes it, no verdict turns on it.',
    tells: everyCheck({ stream: ['proved', 'stream-gaps'] }),
  },
  {
    plant: 'slow-stream',
    because:
      'A press of a second spans four reports or five, ten reports after a plug take two seconds: enough.',
    tells: {},
  },
  {
    plant: 'levels-only',
    because: 'Each level goes away and comes back as it should; what the controller makes of it is not told.',
    tells: {
      press: everySwitch(['limited', 'polarity-unknown']),
      'open-wire': everySwitch(['limited', 'polarity-unknown']),
      stop: { stop: ['limited', 'polarity-unknown'] },
    },
  },
  {
    plant: 'active-only',
    because: 'The rows need no level: all 0 1 1.',
    tells: {},
  },
];

function everyCheck(saying: Saying): PlantedFault['tells'] {
  return { rest: saying, press: saying, 'open-wire': saying, stop: saying };
}

function everySwitch(told: Told): Saying {
  const switches = 'x-home x-far y-home y-far z-home probe stop doors/flap doors/hatch'.split(' ');
  return Object.fromEntries(switches.map((subject) => [subject, told]));
}
