import type { AxisLetter, InputName } from './machine.ts';
import type { Millis, Mm } from './units.ts';

/** A value known to lie between two bounds, both included. */
export interface Between<T extends number = number> {
  readonly low: T;
  readonly high: T;
}

/** Lengths below are mm, or degrees on a rotary axis. */
export type AxisUnit = 'mm' | 'degrees';
/** The way a commanded coordinate counts. */
export type Way = 1 | -1;

/** One motion of one axis as its controller commanded it, reduced to what a drawing needs. Times: controller clock, ms from the first point. */
export interface AxisTrack {
  readonly axis: AxisLetter;
  readonly unit: AxisUnit;
  /** What was being done. */
  readonly label: 'seek' | 'homing' | 'repeat' | 'stopping' | 'move';
  /** Host clock. */
  readonly from: Millis;
  readonly to: Millis;
  /** Reports it was reduced from. */
  readonly samples: number;
  readonly points: readonly TrackPoint[];
  readonly trips: readonly TrackTrip[];
  /** Where it turned back. */
  readonly reversals: readonly TrackPoint[];
  /** The commanded way that leads to the switch; absent where nobody knows. */
  readonly expected?: Way | undefined;
  /** Where the numbers were set anew: the coordinate just before and just after. */
  readonly zeroSet?: { readonly t: Millis; readonly before: Mm; readonly after: Mm } | undefined;
  /** When the person was told to stop it. */
  readonly alarm?: { readonly t: Millis } | undefined;
}

export interface TrackPoint {
  readonly t: Millis;
  readonly position: Mm;
  /** First of a stretch that does not follow from the point before: reports are missing, or the numbers were set anew. */
  readonly apart?: true | undefined;
}

/** An input that changed on the way, between two reports. */
export interface TrackTrip {
  readonly input: InputName;
  readonly to: 'operated' | 'free';
  readonly t: Between<Millis>;
  readonly position?: Between<Mm> | undefined;
  /** The input that this motion should reach. */
  readonly wanted: boolean;
}

/** The true ways of two or three axes, and the frame they span. */
export interface FrameFacts {
  readonly ways: readonly AxisWay[];
  readonly says: 'true' | 'turned' | 'mirrored' | 'too-few-axes' | 'same-axis-twice' | 'leaves-the-plane';
  /** Absent where no frame follows. */
  readonly determinant?: 1 | -1 | undefined;
}

/** Where the tool really goes over the work for a positive command of one axis. */
export interface AxisWay {
  readonly commanded: 'X' | 'Y' | 'Z';
  readonly axis: 'X' | 'Y' | 'Z';
  readonly sign: Way;
  /** Told by the person, or marked by a proved switch that tripped at one place again and again. */
  readonly evidence: 'told' | 'repeated';
}
