import type { CircuitTruth } from './circuit-truth.ts';

/** What the simulated machine really is. Nobody but the bench reads this; the session only ever sees its stream. */
export interface MachineTruth {
  /** In the order of the controller's terminals, which is the order of the stream. */
  readonly inputs: readonly InputTruth[];
  readonly axes: readonly AxisTruth[];
  /** Axes of one place in the order home at the same time; left out: one after the other. */
  readonly homesAtOnce?: boolean;
}

export type ContactKind = 'normally closed' | 'normally open';
/** The controller's setting of one input. */
export type Setting = 'active when open' | 'active when closed';

export interface InputTruth {
  readonly name: string;
  readonly connector: string;
  readonly joined: 'single' | 'series' | 'parallel';
  readonly setting: Setting;
  /** The controller halts on it where it is told to. */
  readonly limit: boolean;
  readonly switches: readonly SwitchTruth[];
  /** Left out: a contact to ground under a pull-up, conducting or not. With it the line has one switch. */
  readonly circuit?: CircuitTruth;
  /** ms for which a new level must hold before it is taken. */
  readonly filter?: number;
}

export interface SwitchTruth {
  /** `input`, or `input/switch` where several share the input. */
  readonly subject: string;
  readonly contact: ContactKind;
  /** Stays in when pressed, until it is let out by hand; takes the drives' power away by a contact of its own. */
  readonly stop: boolean;
  readonly dog?: Dog;
}

/** Where an axis works a switch, mm of true position: it is operated from `actuates` outwards and free again inside `frees`. */
export interface Dog {
  readonly axis: string;
  readonly end: 'negative' | 'positive';
  readonly actuates: number;
  readonly frees: number;
  /** Past this way outwards of `actuates` the switch is free once more; left out: it stays operated up to the metal. */
  readonly length?: number;
  /** Which side of a beam with two motors carries it; left out: the first. */
  readonly side?: 0 | 1;
}

/**
 * True position is counted as the controller would count it after a good homing. Lengths mm, speeds mm/s, mm/s²; degrees in their place on an
 * axis that turns.
 */
export interface AxisTruth {
  readonly letter: string;
  readonly turns: boolean;
  /** Two where one motor drives either side of a beam. */
  readonly motors: 1 | 2;
  /** Where the axis meets solid metal; none on an axis that turns. */
  readonly stops: readonly [number, number];
  /** Where it stands when the bench starts; the controller counts from zero there, as any does before it was homed. */
  readonly stands: number;
  readonly homes: 'negative' | 'positive';
  /** One, or one for each motor. */
  readonly homeInputs: readonly string[];
  readonly homeValue: number;
  readonly homeOrder: number;
  readonly backOff: number;
  readonly approach: number;
  readonly slow: number;
  readonly rapid: number;
  readonly acceleration: number;
  /** ms from the contact to the start of braking, at most. */
  readonly reaction: number;
  /** What one step of the motor moves. */
  readonly step: number;
  /** Heeded by moves once the axis was homed. */
  readonly soft: readonly [number, number];
}
