import type { Ask, AskEnd } from './ask.ts';
import type { FaultName } from './fault-names.ts';
import type { AxisLetter, InputName, Machine, Subject } from './machine.ts';
import type { Reading, StatusReading } from './reading.ts';
import type { OutItem } from './session-facts.ts';
import type { Millis, Seconds } from './units.ts';
import type { CheckName, Missing, Verdict } from './verdict.ts';

/** The readings of one ask: from the moment it was put until it ended, and the last status before it. */
export interface Window {
  readonly from: Millis;
  readonly to: Millis;
  readonly lead: StatusReading | undefined;
  readonly readings: readonly Reading[];
}

export type Ended = AskEnd & { readonly window: Window };

/** A procedure asks, or keeps one subject's finished evidence. What is kept is judged even where the person stops half-way. */
export type Step<Item> = { readonly ask: Ask; readonly guard?: Guard } | { readonly keep: Item };

/** Looks at every reading while its ask is open, and says at once what a person must act on. */
export interface Guard {
  feed(reading: Reading): readonly Danger[];
}

/** Each is a kind of finding too; what it weighs is settled when the motion has ended. */
export type DangerKind = 'heads-away' | 'heads-for-work' | 'wrong-switch' | 'overruns' | 'does-not-clear';

/** Something that is going wrong while an axis moves; the tool cannot stop it, the person can. */
export interface Danger {
  readonly axis: AxisLetter;
  readonly finding: DangerKind;
}

/** Yields steps, is sent how each ask ended (an `ask` step only). The same one runs at a machine, on the bench and from a journal. */
export type Procedure<Item> = Generator<Step<Item>, void, Ended>;

/** What a procedure and a judge may know beside their own evidence. */
export interface Scene {
  readonly machine: Machine;
  /** The input names of the declaration in force when the check began. */
  readonly streamInputs: readonly InputName[];
  /** The last status before the check began. */
  readonly now: StatusReading | undefined;
  readonly presses: number;
  readonly rest: Seconds;
  /** What earlier checks of this session established. */
  readonly known: Known;
  /** Which checks were asked for. */
  readonly checks: readonly CheckName[];
  /** Subjects asked for with --only; undefined: all. */
  readonly only: readonly Subject[] | undefined;
  /** What hangs unplugged as the check begins. */
  readonly out?: readonly OutItem[];
  /** Homings watched to see how well an axis repeats; left out: ten. */
  readonly cycles?: number | undefined;
  /** The text of an RS-274 program that is to fit the machine. */
  readonly program?: string | undefined;
}

/** Facts one check hands to the next. */
export interface Known {
  /** Somebody took their hands off and all inputs were listened to. */
  readonly restHeard: boolean;
  /** Inputs that changed by themselves at rest. */
  readonly flickering: readonly InputName[];
  /** Subject -> the input that answered its presses. */
  readonly answering: Readonly<Record<Subject, InputName>>;
  /** Subjects whose active rest level the person could not explain. */
  readonly restInDoubt: readonly Subject[];
  /** Subjects for which the question about something touching the switch was settled. */
  readonly touchedAsked: readonly Subject[];
  readonly motorsOff: boolean;
  /** Why no hand may go to a switch in this session, where the person would not make it possible. */
  readonly handsOff?: Missing;
  /** What earlier checks of this session came to, oldest first. */
  readonly verdicts: readonly Verdict[];
  readonly motion: MotionKnown;
  /** The causes that a search has named; without one that is to be mended nothing is asked about mending. */
  readonly causes?: readonly (readonly FaultName[])[];
  /** The other input that they concern. */
  readonly beside?: InputName;
}

/** A first short move away from the switch, and what the person saw of it. */
export interface FirstMove {
  readonly window: Window;
  /** The commanded way, as the stream showed it; undefined where it showed no motion. */
  readonly commanded: 1 | -1 | undefined;
  /** The way of the tool over the work, counted as the axis counts; undefined where nobody was sure. */
  readonly tool: 'positive' | 'negative' | 'none' | undefined;
  /** The same of the way back; asked only where the first was not as commanded. */
  readonly back?: FirstMove['tool'];
  /** Another axis moved in its place; asked only where this one did not. */
  readonly other?: boolean;
  /** Which one, and its way as it counts; absent where nobody saw. */
  readonly otherWay?: { readonly axis: AxisLetter; readonly tool: 'positive' | 'negative' };
}

/** What was settled in this session about letting anything move. */
export interface MotionKnown {
  /** How the stop is known: proved by its check, or a hard-wired one that the person told of. */
  readonly stop: 'proved' | 'told' | undefined;
  readonly motorsOn: boolean;
  /** The middle time between two reports, controller clock, as last measured. */
  readonly period?: Millis | undefined;
  /** Axes with a free way on either side, as the person confirmed. */
  readonly free: readonly AxisLetter[];
  /** What the first few millimetres of each axis showed; without them nothing longer is asked for. */
  readonly tried: Readonly<Partial<Record<AxisLetter, FirstMove>>>;
  /** Axes that may not move, and why. */
  readonly held: Readonly<Partial<Record<AxisLetter, Missing>>>;
  /** Why nothing at all may move. */
  readonly refused?: Missing;
}

/** One question about the machine: a procedure that gathers its evidence and a pure judge of it. */
export interface Check<Item> {
  readonly name: CheckName;
  gather(scene: Scene): Procedure<Item>;
  judge(items: readonly Item[], scene: Scene): readonly Verdict[];
  /** What later checks may build on. */
  teaches(items: readonly Item[], scene: Scene): Partial<Known>;
}
