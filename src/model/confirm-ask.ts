import type { CauseTopic, ConfirmTopic, LearnTopic, PlugEnd } from './ask-topics.ts';
import type { FaultName } from './fault-names.ts';
import type { AxisLetter, InputName, Subject } from './machine.ts';

/** A question that is answered yes or no: what it is about goes with what it asks. */
export type ConfirmAsk =
  | About<'hard-wired-stop'>
  | About<'propped', { readonly axes: readonly AxisLetter[] }>
  | About<'pressed' | 'stayed-in' | 'stayed-off' | 'stop-area-clear', OfSwitch>
  | About<'signal-plug', OfPlug>
  /** `linked`: the two terminals of a link, where it is asked whether that is still in. */
  | About<'still-out', OfPlug & { readonly linked?: readonly [string, string] }>
  | About<'way-free' | 'has-gauge', OfAxis>
  /** How long a way, with its unit. */
  | About<'long-way-free', OfAxis & { readonly shows: readonly [string] }>
  | OfCause
  /** `beside`: the other input that the causes concern. */
  | About<
      'mended',
      OfSwitch & { readonly causes: readonly (readonly FaultName[])[]; readonly beside?: InputName }
    >
  | About<LearnTopic, OfStream>;

export type ConfirmOf<Topic extends ConfirmTopic> = Topic extends OfCause['topic']
  ? OfCause
  : Extract<ConfirmAsk, { readonly topic: Topic }>;

type About<Topic extends ConfirmTopic, Facts = unknown> = Topic extends ConfirmTopic
  ? { readonly action: 'confirm'; readonly topic: Topic } & Facts
  : never;

interface OfSwitch {
  readonly subject: Subject;
}

/** What is looked at, or done while the input is watched, in the search for a cause. */
interface OfCause extends OfSwitch {
  readonly action: 'confirm';
  readonly topic: Exclude<CauseTopic, 'mended'>;
  /** The axis that the switch ends, where it is to be moved. */
  readonly axis?: AxisLetter;
}

interface OfPlug extends OfSwitch {
  readonly at: PlugEnd;
}

interface OfAxis {
  readonly axis: AxisLetter;
}

interface OfStream {
  /** The switch whose presses, or the axes whose moves, are asked about. */
  readonly subject?: Subject;
  readonly axes?: readonly AxisLetter[];
  /** What the stream showed. */
  readonly shows?: readonly string[];
}
