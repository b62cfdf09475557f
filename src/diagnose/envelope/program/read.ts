import type { AxisLetter } from '../../../model/machine.ts';
import { type Mm, mm } from '../../../model/units.ts';
import { Boxes, type ProgramBox, type System } from './boxes.ts';
import { execute, takeCodes, type Uses } from './execute.ts';
import type { NotUnderstood, WhyNot } from './not-understood.ts';
import { axisLetters, Travel } from './travel.ts';
import { type Block, blockOf } from './words.ts';

/** How far a program goes, and what of it could not be followed. */
export interface ProgramExtents {
  readonly boxes: readonly ProgramBox[];
  /** Where the first motion of Z goes: the retract that an offset not yet set is broken by. */
  readonly firstZ: { readonly system: System; readonly value: Mm; readonly line: number } | undefined;
  /** It never said which unit it counts in. */
  readonly unitsAssumed: boolean;
  readonly usesToolLength: boolean;
  readonly shiftsTemporarily: boolean;
  readonly notUnderstood: readonly NotUnderstood[];
  readonly lines: number;
  readonly motions: number;
}

/**
 * Reads an RS-274 program (NISTIR 6556) for its extents only: lines by their ends, arcs by their furthest points, drilling cycles by their depth and retract, in the
 * coordinate systems it names. Positions leave tool length and any offset set before it out. What it cannot follow is listed, never guessed. `assumed`: the unit of
 * a program that does not tell one.
 */
export function readProgram(text: string, assumed: 'mm' | 'inch' = 'mm'): ProgramExtents {
  const boxes = new Boxes();
  const notUnderstood: NotUnderstood[] = [];
  const say = ({ line, text: words }: Block, why: WhyNot) => {
    if (!notUnderstood.some((each) => each.line === line && each.why === why))
      notUnderstood.push({ line, text: words, why });
  };
  const travel = new Travel(boxes, assumed === 'inch' ? 25.4 : 1, say);
  const uses: Uses = { units: false, toolLength: false, temporaryShift: false };
  const lines = text.split(/\r\n|\n|\r/);
  for (const [i, line] of lines.entries()) {
    const block = blockOf(line, i + 1);
    if (block && take(block, travel, uses, say)) break;
  }
  const first = travel.firstZ;
  return {
    boxes: boxes.all(),
    firstZ: first && { system: first.system, value: mm(first.value), line: first.line },
    unitsAssumed: !uses.units && travel.motions > 0,
    usesToolLength: uses.toolLength,
    shiftsTemporarily: uses.temporaryShift,
    notUnderstood,
    lines: lines.length,
    motions: travel.motions,
  };
}

/** Whether the program ends with this block. */
function take(block: Block, travel: Travel, uses: Uses, say: (block: Block, why: WhyNot) => void): boolean {
  if (block.mayBeSkipped) say(block, 'may-be-skipped');
  if (!block.unread) return execute(block, travel, uses);
  say(block, block.unread);
  takeCodes(block, travel, uses);
  travel.lose(block.unread === 'subprogram' ? undefined : axesNamed(block.text));
  return false;
}

/** Axis letters anywhere in a line that was not read: their places are lost. */
const axesNamed = (text: string): readonly AxisLetter[] =>
  axisLetters.filter((axis) => new RegExp(`${axis}\\s*[-+#[.\\d]`).test(text.toUpperCase()));
