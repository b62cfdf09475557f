import type { Ask, LearnTopic } from '../model/ask.ts';
import type { ConfirmOf } from '../model/confirm-ask.ts';
import type { Machine } from '../model/machine.ts';
import { visible } from '../model/visible.ts';
import { caution, cautions, dropCautions } from './cautions.ts';
import type { AskWords } from './instruction.ts';
import { named } from './place.ts';

type Confirm = ConfirmOf<LearnTopic>;
type Move = Extract<Ask, { readonly action: 'move' }>;

/** A mechanical hand wheel moves metal without a command: it teaches where positions stand, and tests neither direction nor scale. */
export function moveWords(ask: Move, _machine: Machine): AskWords {
  const way = `${ask.distance} ${ask.unit} in the ${ask.direction} direction`;
  const by = ask.check === 'learn' ? 'by your own control or its hand wheel' : 'by your own control';
  return {
    text: `Move ${ask.axis} by ${way}, ${by}, slowly, over a second or more. Move nothing else. Then say that you did it.`,
    cautions: [...cautions('listens', 'yourControl', 'stayClear', 'clothing'), caution.noBridge],
    short: `Move ${ask.axis} by ${way}`,
  };
}

/** What the stream showed, quoted; it comes from outside and is shown with escapes. */
const shown = (ask: Confirm, at: number): string => visible(ask.shows?.[at] ?? '');
const all = (ask: Confirm): string => (ask.shows ?? []).map(visible).join('; ');

type Say = (ask: Confirm, machine: Machine) => AskWords;
const none = cautions();
const whatFollows = ({ subject, axes }: Confirm, machine: Machine): string =>
  subject === undefined
    ? axes === undefined
      ? 'the moves of every axis'
      : `the moves of ${axes.join(', ')}`
    : `the presses of ${named(subject, machine)}`;

/** Questions that no watching answers. The tool asks and does not guess. */
export const learnWords = {
  'ready-to-move': (_ask, machine) => ({
    text: 'Next each axis is moved a few millimetres by you. Is there 50 mm of free way on every side, everyone out of reach, and a hard-wired emergency stop within your reach that you know takes power away? No: axes are left out.',
    cautions: [
      ...cautions('listens', 'stayClear', 'clothing', 'statusNoProof', 'licensed'),
      ...dropCautions(machine),
    ],
    short: 'Free way, stop in reach, everyone clear?',
  }),
  'which-value': (ask, machine) => ({
    text: `Several values follow ${whatFollows(ask, machine)} equally well: ${all(ask)}. Is the first of them the right one, by the controller's papers? No: the next is asked about.`,
    cautions: none,
    short: `Is it ${shown(ask, 0)}?`,
  }),
  'which-position': (ask, machine) => ({
    text: `Several numbers follow ${whatFollows(ask, machine)} equally well: ${all(ask)}. Is the first of them the machine coordinate, the one that setting a work zero leaves alone? No: the next is asked about.`,
    cautions: none,
    short: `Machine coordinate: ${shown(ask, 0)}?`,
  }),
  'which-base': (ask) => ({
    text: `The number in ${shown(ask, 0)} can be read in base ${shown(ask, 1)} or in another base, and nothing heard so far decides it. Is it base ${shown(ask, 1)}?`,
    cautions: none,
    short: `Is it written in base ${shown(ask, 1)}?`,
  }),
  'nothing-changed': (ask) => ({
    text: `Nothing in this stream changed while these were pressed: ${all(ask)}. tellwire can only read what the controller reports: the level or the active state of each input, whenever it changes and several times a second (firmware-notes says what). Is there a setting that puts inputs into the report, and is it on? Yes: the other inputs are pressed too, as they may be in it. No: there is nothing to learn here, and it is written down so.`,
    cautions: none,
    short: 'Should inputs be in this stream?',
  }),
  together: (ask) => ({
    text: `In this stream ${all(ask)} always changed together. Do they share one input of the controller? Yes: all are read from that one value. No: none of them is bound.`,
    cautions: none,
    short: 'Do they share one input?',
  }),
  'means-active': (ask) => ({
    text: `While pressed, the stream showed: ${all(ask)}. Does your controller mean by this that the input is active, after its polarity setting? Yes: active. No: that means not active. Not sure: it is read as a level, and polarity is not tested.`,
    cautions: none,
    short: 'Does pressed read as active?',
  }),
  'reads-right': (ask) => ({
    text: `The last report as it is now read: ${all(ask)}. Is this how the machine stands? Yes: the description is written as learned. No: it is written and marked as not accepted.`,
    cautions: none,
    short: 'Is this how the machine stands?',
  }),
} satisfies Record<LearnTopic, Say>;
