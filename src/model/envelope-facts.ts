import type { AxisLetter, End, InputName } from './machine.ts';
import type { AxisUnit } from './motion-facts.ts';
import type { Mm } from './units.ts';

/** Everything that bounds one axis, in machine coordinates; what is not known is absent. */
export interface EnvelopeFacts {
  readonly axis: AxisLetter;
  readonly unit: AxisUnit;
  readonly ends: Readonly<Record<End, EnvelopeEnd>>;
  readonly homes?: End | undefined;
  /** Where the axis stands after homing. */
  readonly homeValue?: Mm | undefined;
  readonly backOff?: Mm | undefined;
  readonly soft?: readonly [Mm, Mm] | undefined;
  /** How far inside its trip a soft limit must lie, and what the switch's release and the wander of home take of it. */
  readonly softMargin: Mm;
  /** What a stop from rapid takes between trip and metal. */
  readonly roomNeeded?: Mm | undefined;
  /** Left to work in between the margins of both switches. */
  readonly usable?: Mm | undefined;
  /** Where the zero of each work coordinate system lies, a temporary shift included. */
  readonly origins: readonly WorkOrigin[];
  /** What a program needs, put where its coordinate system puts it. */
  readonly parts: readonly PartExtent[];
}

export interface EnvelopeEnd {
  readonly stop?: Mm | undefined;
  readonly stopFrom?: 'configured' | 'told' | 'measured' | undefined;
  readonly trip?: Mm | undefined;
  readonly tripFrom?: 'configured' | 'commanded' | undefined;
  readonly input?: InputName | undefined;
}

export interface WorkOrigin {
  /** RS-274: G54 to G59.3. */
  readonly system: string;
  readonly at: Mm;
  readonly active: boolean;
  /** Of which a temporary shift, G92. */
  readonly shift?: Mm | undefined;
}

export interface PartExtent {
  /** RS-274 name of the coordinate system, or `machine`. */
  readonly system: string;
  readonly low: Mm;
  readonly high: Mm;
  /** Lines of the program that go there. */
  readonly lowLine: number;
  readonly highLine: number;
}

/** What a program was read to reach, and what of it could not be followed. */
export interface ProgramFacts {
  readonly lines: number;
  readonly motions: number;
  /** It never said which unit it counts in. */
  readonly unitsAssumed: boolean;
  readonly usesToolLength: boolean;
  readonly shiftsTemporarily: boolean;
  readonly notUnderstood: readonly {
    /** From 1. */
    readonly line: number;
    readonly text: string;
    readonly why: ProgramDoubt;
  }[];
}

/** Why a line of a program could not be followed, or only in part. */
export const programDoubts = [
  'formula',
  'parameter',
  'subprogram',
  'stray-characters',
  'open-comment',
  'unknown-code',
  'may-be-skipped',
  'from-unknown-place',
  'arc-without-centre',
  'arc-radii-differ',
  'cycle-in-other-plane',
  'cycle-without-depth',
  'stored-point',
  'changes-offset',
  'cutter-compensation',
  'probe',
] as const;
export type ProgramDoubt = (typeof programDoubts)[number];
