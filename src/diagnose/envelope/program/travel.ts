import type { AxisLetter } from '../../../model/machine.ts';
import type { Boxes, System } from './boxes.ts';
import { type Modes, type Place, startModes } from './modes.ts';
import type { WhyNot } from './not-understood.ts';
import type { Block } from './words.ts';

export const axisLetters = ['X', 'Y', 'Z', 'A', 'B', 'C', 'U', 'V', 'W'] as const;
const rotary: ReadonlySet<string> = new Set(['A', 'B', 'C']);

/** Where a program has taken each axis so far, and how far it has gone. */
export class Travel {
  readonly modes: Modes;
  readonly boxes: Boxes;
  motions = 0;
  firstZ: (Place & { readonly line: number }) | undefined;
  private readonly say: (block: Block, why: WhyNot) => void;

  constructor(boxes: Boxes, unit: number, say: (block: Block, why: WhyNot) => void) {
    this.boxes = boxes;
    this.modes = startModes(unit);
    this.say = say;
  }

  cannotFollow(block: Block, why: WhyNot): void {
    this.say(block, why);
  }

  /** Forgets where axes stand; all of them where undefined. */
  lose(axes: readonly AxisLetter[] | undefined): void {
    for (const axis of axes ?? axisLetters) delete this.modes.places[axis];
  }

  word(block: Block, letter: string): number | undefined {
    return block.words.find((each) => each.letter === letter)?.value;
  }

  axesOf(block: Block): readonly AxisLetter[] {
    return axisLetters.filter((axis) => this.word(block, axis) !== undefined);
  }

  /** A number of the program in mm, or degrees on a rotary axis. */
  length(axis: AxisLetter, value: number): number {
    return rotary.has(axis) ? value : value * this.modes.unit;
  }

  /** Where a block sends an axis, in `system` before any temporary shift; undefined where it does not. */
  target(block: Block, axis: AxisLetter, system: System): number | undefined | 'unknown' {
    const value = this.word(block, axis);
    if (value === undefined) return undefined;
    const length = this.length(axis, value);
    if (system === 'machine') return length;
    if (this.modes.absolute) return length + (this.modes.shift[axis] ?? 0);
    const from = this.modes.places[axis];
    return from?.system === system ? from.value + length : 'unknown';
  }

  /** Puts an axis at a place and counts it into the box. */
  arrive(axis: AxisLetter, place: Place, line: number): void {
    this.modes.places[axis] = place;
    this.boxes.add(place.system, axis, place.value, place.value, line);
    if (axis === 'Z') this.firstZ ??= { ...place, line };
  }

  /** Straight to where the block says, along some axes only where `axes` is given. */
  straight(block: Block, system: System, axes: readonly AxisLetter[] = axisLetters): void {
    let unknown = false;
    for (const axis of axes) {
      const value = this.target(block, axis, system);
      if (value === 'unknown') {
        unknown = true;
        this.lose([axis]);
      } else if (value !== undefined) this.arrive(axis, { system, value }, block.line);
    }
    if (unknown) this.cannotFollow(block, 'from-unknown-place');
  }
}
