import type { Answer, AskedFor, EndedBy, PlugEnd } from './ask.ts';
import type { Machine, Subject } from './machine.ts';
import type { UnreadableWhy } from './reading.ts';
import type { Millis, Seconds } from './units.ts';
import type { CheckName, Verdict } from './verdict.ts';
import type { MachineWiring } from './wiring-study.ts';

/** Everything a report is made from: a session as facts, with no clock, file or port left in it. */
export interface SessionFacts {
  readonly tool: { readonly version: string; readonly rules: number };
  /** Start in UTC, ISO 8601, as session.json holds it; never re-read from a clock. */
  readonly started: string;
  readonly port: string;
  readonly machine: Machine;
  /** SHA-256, hex. */
  readonly machineHash: string;
  readonly captureHash: string;
  readonly asked: {
    readonly checks: readonly CheckName[];
    readonly presses: number;
    readonly rest: Seconds;
    readonly only: readonly Subject[] | undefined;
  };
  /** The last verdict of each check and subject, in the order first given. */
  readonly verdicts: readonly Verdict[];
  readonly dialogue: readonly AskRecord[];
  readonly register: readonly OutItem[];
  readonly stream: StreamFacts;
  /** What the wirings of the machine do, computed; left out of facts put together without it. */
  readonly wirings?: readonly MachineWiring[];
  /** Every line that was written to the port; `own`: the operator typed it and had it sent. */
  readonly sent: readonly { readonly at: Millis; readonly text: string; readonly own?: true }[];
  /** Ended before its last check, by the person or for want of a stream: can be resumed. */
  readonly stopped: boolean;
}

/** One ask with the very words shown and how it ended. */
export interface AskRecord {
  readonly id: number;
  readonly again: number | undefined;
  readonly check: AskedFor;
  readonly subject: Subject | undefined;
  readonly text: string;
  readonly cautions: readonly string[];
  readonly from: Millis;
  readonly to: Millis | undefined;
  readonly by: EndedBy | undefined;
  readonly answer: Answer | undefined;
}

/** Something a person pulled, or linked, and has not yet been seen to put back. */
export interface OutItem {
  readonly subject: Subject;
  readonly at: PlugEnd;
  /** The two terminals that a piece of wire joins; absent: a plug that is out. */
  readonly linked?: readonly [string, string];
}

export interface StreamFacts {
  readonly inputs: readonly string[];
  readonly axes: readonly string[];
  readonly lines: number;
  readonly reports: number;
  readonly median: Millis | undefined;
  readonly longest: Millis | undefined;
  readonly lost: number;
  readonly gaps: number;
  readonly restarts: number;
  readonly unreadable: Readonly<Partial<Record<UnreadableWhy, number>>>;
}
