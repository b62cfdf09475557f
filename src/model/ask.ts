import type { CheckName } from './check-name.ts';
import type { AxisLetter, InputName, Subject } from './machine.ts';
import type { Millis, Seconds } from './units.ts';

/** Everything a person is ever asked, by action. Words for each live in `words`; nothing here is prose. */
export type Ask = AskCommon & AskAction;

/** What an ask belongs to. `resume` asks come first after a resume and `learn` asks teach a stream: neither belongs to a check. */
export type AskedFor = CheckName | 'resume' | 'learn';

interface AskCommon {
  readonly check: AskedFor;
  readonly seconds: Seconds;
}

export type AskAction =
  | { readonly action: 'hands-off' }
  | PressAsk
  | {
      readonly action: 'release';
      readonly subject: Subject;
      readonly watch: readonly InputName[];
      readonly why: 'held' | 'sticks' | 'latched';
    }
  | { readonly action: 'power'; readonly what: 'motors' | 'controller'; readonly to: 'off' | 'on' }
  | {
      readonly action: 'unplug';
      readonly subject: Subject;
      readonly at: PlugEnd;
      readonly conductor: 'signal plug' | 'whole sensor plug';
      readonly again?: true;
    }
  | {
      readonly action: 'replug';
      readonly subject: Subject;
      readonly at: PlugEnd;
      readonly conductor: 'signal plug' | 'whole sensor plug';
      readonly why?: 'wrong-plug' | 'still-out' | 'stream-says-out';
    }
  | { readonly action: 'clear'; readonly subject: Subject }
  | {
      readonly action: 'move';
      readonly axis: AxisLetter;
      readonly direction: 'positive' | 'negative';
      readonly distance: number;
      readonly unit: 'mm' | 'degrees';
    }
  | { readonly action: 'look'; readonly topic: 'touched'; readonly subject: Subject }
  | { readonly action: 'look'; readonly topic: 'power'; readonly subject: Subject }
  | {
      readonly action: 'confirm';
      readonly topic: ConfirmTopic;
      readonly subject?: Subject;
      readonly axes?: readonly AxisLetter[];
      readonly at?: PlugEnd;
      /** What the stream showed, where that is what is asked about. */
      readonly shows?: readonly string[];
    };

export interface PressAsk {
  readonly action: 'press';
  readonly subject: Subject;
  readonly round: number;
  readonly rounds: number;
  /** `out`: the switch is unplugged and an answer would show that another one was. */
  readonly expect: 'answer' | 'no-answer';
  /** Inputs that flicker by themselves: their edges are no answer. */
  readonly deaf: readonly InputName[];
}

export type PlugEnd = 'switch' | 'controller';
export type ConfirmTopic =
  | 'stayed-in'
  | 'pressed'
  | 'propped'
  | 'signal-plug'
  | 'still-out'
  | 'stop-area-clear'
  | 'stayed-off'
  | LearnTopic;
/** Questions about an unknown stream that watching alone does not answer. */
export type LearnTopic =
  | 'ready-to-move'
  | 'which-value'
  | 'which-base'
  | 'which-position'
  | 'together'
  | 'means-active'
  | 'reads-right';

/** Every word a person may answer with. Which of them an ask takes is `answersTo(ask)`. */
export type Answer =
  | 'done'
  | 'cannot'
  | 'not-sure'
  | 'skip'
  | 'stop'
  | 'yes'
  | 'no'
  | 'knob-free'
  | 'lamp'
  | 'meter'
  | 'did-not';

const always = ['cannot', 'not-sure', 'skip', 'stop'] as const satisfies readonly Answer[];

/** The answers an ask takes, the plain ones first; "cannot", "not sure", "skip" and "stop" are always among them. */
export function answersTo(ask: AskAction): readonly Answer[] {
  if (ask.action === 'confirm') return ['yes', 'no', ...always];
  if (ask.action === 'look') {
    return ask.topic === 'touched'
      ? ['yes', 'no', ...always]
      : ['knob-free', 'lamp', 'meter', 'did-not', ...always];
  }
  return ['done', ...always];
}

export const subjectOf = (ask: AskAction): Subject | undefined =>
  'subject' in ask ? ask.subject : undefined;

/** How an ask came to its end: the stream showed it, the person answered, its time ran out, or the stream broke off. */
export type EndedBy = 'seen' | 'answer' | 'time' | 'gap';

export interface AskEnd {
  readonly by: EndedBy;
  readonly answer?: Answer;
  /** Host clock at which the answer came; watching may have gone on after it. */
  readonly answeredAt?: Millis;
}
