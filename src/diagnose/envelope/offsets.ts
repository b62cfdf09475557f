import type { AxisLetter } from '../../model/machine.ts';
import { type Mm, mm } from '../../model/units.ts';
import type { System } from './program/boxes.ts';

/** Lengths by axis; an axis left out is zero. */
export type ByAxis = Readonly<Partial<Record<AxisLetter, Mm>>>;

/**
 * Where work coordinates lie in the machine's (RS-274; NISTIR 6556, 3.5.13, 3.5.18 and 3.5.7): machine = work + origin + temporary shift, and on Z the tool's
 * length. An offset is a distance from machine zero: a new machine zero moves the work with it.
 */
export interface WorkOffsets {
  /** G54 to G59.3. */
  readonly origins: Readonly<Partial<Record<WorkSystem, ByAxis>>>;
  /** The system that was active when the program began. */
  readonly active: WorkSystem;
  /** What G92 left behind. */
  readonly shift: ByAxis;
  readonly toolLength: Mm | undefined;
}

/** What holds where nobody told anything: the first system, nothing shifted (NISTIR 6556, table 5). */
export const untold: WorkOffsets = { origins: {}, active: 'G54', shift: {}, toolLength: undefined };

export type WorkSystem = Exclude<System, 'active' | 'machine'>;

/** In the order of their numbers 1 to 9 (NISTIR 6556, 3.5.13). */
export const workSystems: readonly WorkSystem[] = [
  'G54',
  'G55',
  'G56',
  'G57',
  'G58',
  'G59',
  'G59.1',
  'G59.2',
  'G59.3',
];

/** What must be added to a position of `system` to have it in machine coordinates, mm. */
export function originOf(offsets: WorkOffsets, system: System, axis: AxisLetter, usesToolLength = false): Mm {
  if (system === 'machine') return mm(0);
  const named = system === 'active' ? offsets.active : system;
  const tool = usesToolLength && axis === 'Z' ? (offsets.toolLength ?? 0) : 0;
  return mm((offsets.origins[named]?.[axis] ?? 0) + (offsets.shift[axis] ?? 0) + tool);
}
