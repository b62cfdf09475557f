import type { AxisLetter } from '../../model/machine.ts';
import type { WorkOffsets } from './offsets.ts';
import type { System } from './program/boxes.ts';
import type { ProgramExtents } from './program/read.ts';

/** A program parted by what is known of where it lies. */
export interface Placed {
  /** What can be put into machine coordinates. */
  readonly program: ProgramExtents;
  /** Whether anything was left out: an axis whose work zero nobody told may lie anywhere. */
  readonly isWhole: boolean;
}

/** The part of a program whose work zeros were told, and what counts from machine zero. */
export function placed(program: ProgramExtents, offsets: WorkOffsets): Placed {
  const isTold = (system: System, axis: AxisLetter): boolean =>
    system === 'machine' ||
    offsets.origins[system === 'active' ? offsets.active : system]?.[axis] !== undefined;
  const axesOf = (axes: object) => Object.keys(axes) as AxisLetter[];
  const boxes = program.boxes
    .map(({ system, axes }) => ({
      system,
      axes: Object.fromEntries(
        axesOf(axes).flatMap((axis) => (isTold(system, axis) ? [[axis, axes[axis]] as const] : [])),
      ),
    }))
    .filter(({ axes }) => axesOf(axes).length > 0);
  const { firstZ } = program;
  return {
    program: { ...program, boxes, firstZ: firstZ && isTold(firstZ.system, 'Z') ? firstZ : undefined },
    isWhole: program.boxes.every(({ system, axes }) => axesOf(axes).every((axis) => isTold(system, axis))),
  };
}
