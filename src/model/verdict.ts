import type { CauseFacts } from './cause-facts.ts';
import type { CheckName } from './check-name.ts';
import type { EnvelopeFacts, ProgramFacts } from './envelope-facts.ts';
import type { FaultName } from './fault-names.ts';
import type { Finding } from './finding.ts';
import type { HomingFacts } from './homing-facts.ts';
import type { InputName, Subject } from './machine.ts';
import type { Missing } from './missing.ts';
import type { AxisTrack, FrameFacts } from './motion-facts.ts';
import type { Active, Level } from './reading.ts';
import type { RepeatFacts } from './repeat-facts.ts';
import type { ScaleFacts } from './scale-facts.ts';
import type { StoppingFacts } from './stopping-facts.ts';
import type { Millis, Share } from './units.ts';

export { type CheckName, checkNames, everyCheck } from './check-name.ts';
export type { Missing } from './missing.ts';

/** Worst last. Nothing is proved by silence: a check without its evidence is inconclusive. */
export const statuses = ['proved', 'limited', 'not-tested', 'inconclusive', 'failed'] as const;
export type Status = (typeof statuses)[number];

/** The evidence ladder, weakest first: a file says so, a person says so, the stream reports it, an input edge fell inside its ask, that three times or more, a measurement. */
export const evidenceLevels = ['configured', 'told', 'commanded', 'edge', 'repeated', 'measured'] as const;
export type EvidenceLevel = (typeof evidenceLevels)[number];

export interface Verdict {
  readonly check: CheckName;
  readonly subject: Subject;
  readonly status: Status;
  readonly evidence: EvidenceLevel;
  readonly findings: readonly Finding[];
  /** What would have been needed, where the status is inconclusive or not tested. */
  readonly missing: readonly Missing[];
  readonly facts: Facts;
  /** Exactly the readings that prove it. */
  readonly traces: readonly Trace[];
}

/** Measured facts a reader may want beside the verdict. Absent means not observed. */
export interface Facts {
  readonly resolution?: Resolution;
  readonly rest?: {
    readonly level: Level;
    readonly active: Active;
    readonly quietFor: Millis;
    readonly edges: number;
  };
  readonly presses?: PressFacts;
  /** Watched with nobody near it: how often it tripped, and the one-sided bound on the rate. */
  readonly soak?: { readonly trips: number; readonly watched: Millis; readonly perHourAtMost95?: number };
  /** Reported rest, pressed, unplugged: 1 active, 0 not, ? unknown; of levels where `by` is 'change' (0 = as at rest). */
  readonly row?: { readonly bits: string; readonly by: 'active' | 'change' };
  readonly contactFound?: 'normally open' | 'normally closed';
  /** The input that answered, where it is another one than declared. */
  readonly answeredBy?: InputName;
  /** What can still be the matter, where a switch did otherwise than it should. */
  readonly possible?: PossibleCauses;
  readonly unpluggedAt?: 'switch' | 'controller';
  /** The controller reported a fault on a press: it acts on this input. */
  readonly controllerActed?: boolean;
  readonly powerShownBy?: 'knob-free' | 'lamp' | 'meter';
  /** Motions watched, oldest first; each at most a few hundred points. */
  readonly tracks?: readonly AxisTrack[];
  /** On the verdict about the machine's axes together. */
  readonly frame?: FrameFacts;
  readonly homing?: HomingFacts;
  readonly repeat?: RepeatFacts;
  readonly stopping?: StoppingFacts;
  readonly envelope?: EnvelopeFacts;
  readonly program?: ProgramFacts;
  readonly scale?: ScaleFacts;
  readonly cause?: CauseFacts;
}

/** Computed from the circuit: everything known that would have been seen just so. */
export interface PossibleCauses {
  /** The likeliest first; several names: these faults at once. */
  readonly causes: readonly (readonly FaultName[])[];
  /** How many less likely ones agree as well. */
  readonly others: number;
  /** What of the circuit nobody declared. */
  readonly assumed: readonly ('circuit' | 'contact')[];
}

export interface PressFacts {
  readonly asked: number;
  readonly answered: number;
  /** Presses that another input answered in its place; they count for nothing. */
  readonly elsewhere?: number;
  /** One-sided exact binomial bound on the share of presses that could still go unseen. */
  readonly missShareAtMost95?: Share;
}

/** Time resolution of the stream while a check ran. */
export interface Resolution {
  readonly reports: number;
  readonly median: Millis;
  readonly longest: Millis;
  /** A pulse at least this long could not have fallen between two reports. */
  readonly surePulse: Millis;
  readonly lost: number;
  readonly unreadable: number;
}

/** The cited readings of some inputs over a span, reduced to the points where something changed and both its neighbours. */
export interface Trace {
  readonly label: TraceLabel;
  /** Host clock. */
  readonly from: Millis;
  readonly to: Millis;
  readonly samples: number;
  readonly signals: readonly TraceSignal[];
}

export type TraceLabel =
  | 'rest'
  | 'press'
  | 'out'
  | 'press-while-out'
  | 'press-after-replug'
  | 'stop'
  | 'unlatch';

export interface TraceSignal {
  readonly input: InputName;
  /** Controller clock, ms since the first point of the trace. */
  readonly points: readonly TracePoint[];
}

export interface TracePoint {
  readonly t: Millis;
  readonly level: Level;
  readonly active: Active;
}
