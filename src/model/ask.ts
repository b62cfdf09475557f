import type { LengthPlace, MotionTopic, PlugEnd } from './ask-topics.ts';
import type { CheckName } from './check-name.ts';
import type { ConfirmAsk } from './confirm-ask.ts';
import type { MeterDeed } from './deed-names.ts';
import type { AxisLetter, InputName, Subject } from './machine.ts';
import type { Millis, Mm, Seconds } from './units.ts';

export {
  type CauseTopic,
  type ConfirmTopic,
  handsOnTopics,
  type LearnTopic,
  type LengthPlace,
  lengthPlaces,
  type MotionTopic,
  type PlugEnd,
} from './ask-topics.ts';

/** Everything a person is ever asked, by action. Words for each live in `words`; nothing here is prose. */
export type Ask = AskCommon & AskAction;

/** What an ask belongs to. `resume` asks come first after a resume and `learn` asks teach a stream: neither belongs to a check. */
export type AskedFor = CheckName | 'resume' | 'learn';

interface AskCommon {
  readonly check: AskedFor;
  readonly seconds: Seconds;
  /** It was asked for before, and what came of it is hard to believe. */
  readonly onceMore?: true;
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
  | JumperAsk
  /** `subject`: the switch at which the controller halted; absent: it halted while something moved. */
  | { readonly action: 'clear'; readonly subject?: Subject }
  | { readonly action: 'seek'; readonly axis: AxisLetter; readonly late?: Late }
  | { readonly action: 'home'; readonly axis: AxisLetter | 'all'; readonly late?: Late }
  | {
      readonly action: 'move';
      readonly axis: AxisLetter;
      readonly direction: 'positive' | 'negative';
      readonly distance: number;
      readonly unit: 'mm' | 'degrees';
    }
  | { readonly action: 'look'; readonly topic: 'touched' | 'power' | 'lamp'; readonly subject: Subject }
  | { readonly action: 'look'; readonly topic: MotionTopic; readonly axis: AxisLetter }
  | MeasureAsk
  | ConfirmAsk;

/** How late a warning of this tool comes at best: two reports as they were measured, and the way an axis goes in that time at its approach speed. */
export interface Late {
  readonly after: Millis;
  /** mm, or degrees; absent where the approach speed is not told. */
  readonly by?: Mm;
}

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

/** Two named terminals are bridged with a piece of wire, or freed again. Only where the file tells the circuit and its voltage. */
export interface JumperAsk {
  readonly action: 'jumper' | 'unjumper';
  readonly subject: Subject;
  readonly at: PlugEnd;
  readonly terminals: readonly [string, string];
}

/** A number read off an instrument: the tips of a meter at the wiring of a switch, or a length of an axis. */
export type MeasureAsk = MeterAsk | LengthAsk;

export type MeterAsk = {
  readonly action: 'measure';
  readonly where: MeterDeed;
  readonly subject: Subject;
} & (
  | { readonly quantity: 'voltage'; readonly unit: 'V' }
  | { readonly quantity: 'resistance'; readonly unit: 'ohm' }
  | { readonly quantity: 'current'; readonly unit: 'mA' }
);

export interface LengthAsk {
  readonly action: 'measure';
  readonly where: LengthPlace;
  readonly axis: AxisLetter;
  readonly quantity: 'distance';
  readonly unit: 'mm' | 'degrees';
  /** The work coordinate system meant (RS-274). */
  readonly system?: string;
}

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
  | 'did-not'
  | 'positive'
  | 'negative'
  | 'none'
  | 'on'
  | 'off'
  | 'value'
  | 'over-range';

const always = ['cannot', 'not-sure', 'skip', 'stop'] as const satisfies readonly Answer[];

type LookTopic = Extract<AskAction, { readonly action: 'look' }>['topic'];

const looksLike = {
  touched: ['yes', 'no'],
  power: ['knob-free', 'lamp', 'meter', 'did-not'],
  lamp: ['on', 'off'],
  direction: ['positive', 'negative', 'none'],
  reached: ['yes', 'no'],
  buzzed: ['yes', 'no'],
  'came-back': ['yes', 'no'],
  'past-switch': ['yes', 'no'],
  'moved-other': ['yes', 'no'],
  racked: ['yes', 'no'],
} as const satisfies Record<LookTopic, readonly Answer[]>;

/** The answers an ask takes, the plain ones first; "cannot", "not sure", "skip" and "stop" are always among them. */
export function answersTo(ask: AskAction): readonly Answer[] {
  if (ask.action === 'confirm') return ['yes', 'no', ...always];
  if (ask.action === 'look') {
    return [...looksLike[ask.topic], ...always];
  }
  if (ask.action === 'measure')
    return ['value', ...(ask.quantity === 'resistance' ? (['over-range'] as const) : []), ...always];
  return ['done', ...always];
}

export const subjectOf = (ask: AskAction): Subject | undefined =>
  'subject' in ask ? ask.subject : undefined;

/** How an ask came to its end: the stream showed it, the person answered, its time ran out, or the stream broke off. */
export type EndedBy = 'seen' | 'answer' | 'time' | 'gap';

export type AskEnd = ToldAnswer & {
  readonly by: EndedBy;
  /** Host clock at which the answer came; watching may have gone on after it. */
  readonly answeredAt?: Millis;
};

/** What was answered, if anything was; the answer `value` comes with the number read off an instrument, in the unit of the ask, and no other does. */
export type ToldAnswer =
  | { readonly answer?: Exclude<Answer, 'value'>; readonly value?: never }
  | { readonly answer: 'value'; readonly value: number };

/** Answer and number, which are written and typed apart, as one; one without the other is no answer. */
export function toldAs(answer: Answer | undefined, value: number | undefined): ToldAnswer {
  if (answer === 'value') return value === undefined ? {} : { answer, value };
  return answer === undefined ? {} : { answer };
}
