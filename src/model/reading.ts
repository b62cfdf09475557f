import type { InputName } from './machine.ts';
import type { Millis, Mm, Volts } from './units.ts';

/** Electrical level of an input as the controller reports it; `?` where it does not. */
export type Level = 'H' | 'L' | '?';
/** The input after the controller's polarity setting; `?` where it is not reported. */
export type Active = '1' | '0' | '?';
export type Activity = 'still' | 'moving' | 'homing' | 'fault' | '?';

/** One received line: its bytes as latin1 characters, at most 240 of them, and how many more there were. */
export interface Line {
  /** Host clock, monotonic, ms. */
  readonly arrived: Millis;
  readonly text: string;
  readonly cut: number;
}

/**
 * What a line, or its absence, says. `arrived` is the host's monotonic clock, to which asks and answers belong; `at` is the
 * controller's own clock made continuous within a `segment`, to which durations belong. A gap begins a new segment.
 */
export type Reading =
  | DeclaredReading
  | StatusReading
  | EdgeReading
  | VoltsReading
  | UnreadableReading
  | GapReading;

export interface DeclaredReading {
  readonly kind: 'declared';
  readonly arrived: Millis;
  readonly segment: number;
  readonly units: 'mm' | 'inch';
  readonly axes: readonly string[];
  readonly inputs: readonly InputName[];
}

/** A snapshot of all inputs. Arrays follow `inputs` and `axes` of the declaration in force, carried along by reference. */
export interface StatusReading {
  readonly kind: 'status';
  readonly arrived: Millis;
  readonly at: Millis;
  readonly segment: number;
  /** Reports that never arrived between this one and the one before. */
  readonly lost: number;
  readonly inputs: readonly InputName[];
  readonly axes: readonly string[];
  readonly activity: Activity;
  readonly levels: readonly Level[];
  readonly active: readonly Active[];
  /** Commanded, not measured; undefined where not reported. */
  readonly positions: readonly (Mm | undefined)[];
}

/** One electrical edge, time-stamped by the controller. */
export interface EdgeReading {
  readonly kind: 'edge';
  readonly arrived: Millis;
  readonly at: Millis;
  readonly segment: number;
  readonly lost: number;
  readonly input: InputName;
  readonly level: 'H' | 'L';
}

export interface VoltsReading {
  readonly kind: 'volts';
  readonly arrived: Millis;
  readonly at: Millis;
  readonly segment: number;
  readonly inputs: readonly InputName[];
  readonly volts: readonly (Volts | undefined)[];
}

/** A line that was heard and not understood: counted, never judged. */
export interface UnreadableReading {
  readonly kind: 'unreadable';
  readonly arrived: Millis;
  readonly why: UnreadableWhy;
}

export type UnreadableWhy =
  | 'too-long'
  | 'not-a-sentence'
  | 'wrong-sum'
  | 'unknown-sentence'
  | 'wrong-field-count'
  | 'wrong-number'
  /** Its sequence or clock contradicts the reports before it and no second report agrees with it. */
  | 'out-of-step'
  | 'before-declaration';

/** The stream was interrupted: what was known of levels and position before it no longer holds. */
export interface GapReading {
  readonly kind: 'gap';
  readonly arrived: Millis;
  readonly segment: number;
  readonly why: GapWhy;
}

export type GapWhy = 'opened' | 'lost-port' | 'controller-restarted' | 'declaration-changed';
