import type { LookDeed, WatchedDeed } from './deed-names.ts';

/** Lengths: read off an instrument, or off the controller's settings. */
export const lengthPlaces = [
  'trip on a dial gauge',
  'way of the tool over the work',
  'lower soft limit',
  'upper soft limit',
  'work zero in machine coordinates',
  'temporary shift',
  'overtravel of the switch',
  'from the trip to the hard stop',
] as const;
export type LengthPlace = (typeof lengthPlaces)[number];

/** What a person saw of a move: which way the tool went over the work, whether it came to its switch and back, where it stands, whether the motor buzzed, another axis moved or a beam twisted. */
export type MotionTopic =
  | 'direction'
  | 'reached'
  | 'buzzed'
  | 'came-back'
  | 'past-switch'
  | 'moved-other'
  | 'racked';

export type PlugEnd = 'switch' | 'controller';
export type ConfirmTopic =
  | 'stayed-in'
  | 'pressed'
  | 'propped'
  | 'signal-plug'
  | 'still-out'
  | 'stop-area-clear'
  | 'stayed-off'
  | 'hard-wired-stop'
  | 'way-free'
  | 'long-way-free'
  | 'has-gauge'
  | LearnTopic
  | CauseTopic;
/** Asked while a cause is sought: a look, or something done by hand or by the person's own control while the input is watched. */
export type CauseTopic = LookDeed | WatchedDeed | 'mended';
/** Those that put a hand to the switch: motor power must be off. */
export const handsOnTopics: readonly ConfirmTopic[] = [
  'tap',
  'carriage',
  'tug',
  'flex',
  'lever',
  'face',
  'blades',
  'gap',
  'bracket',
  'clip',
];
/** Questions about an unknown stream that watching alone does not answer. */
export type LearnTopic =
  | 'ready-to-move'
  | 'which-value'
  | 'which-base'
  | 'which-position'
  | 'nothing-changed'
  | 'together'
  | 'means-active'
  | 'reads-right';
