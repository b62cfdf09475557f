import type { Finding } from './finding.ts';
import { allSwitches, type Machine, oppositeSide, type Subject, type Switch } from './machine.ts';

export interface SideClash {
  readonly subject: Subject;
  readonly finding: Extract<Finding, { kind: 'side-clash' }>;
}

/**
 * Switches whose `side` does not fit their `end` and the axis's `positive` direction. ISO 841 counts an axis positive where the
 * tool goes over the work, so a switch at the positive end stands where positive points to and one at the negative end
 * opposite. Where the table moves, its switch may stand on the frame or ride on the table, on opposite sides: nothing follows.
 */
export function sideClashes(machine: Machine): readonly SideClash[] {
  return allSwitches(machine).flatMap((each) => clashOf(each, machine) ?? []);
}

function clashOf({ subject, axis: letter, end, side }: Switch, machine: Machine): SideClash | undefined {
  const axis = machine.axes.find((each) => each.letter === letter);
  if (axis?.positive === undefined || axis.moves === 'table' || end === undefined || side === undefined)
    return undefined;
  const expected = end === 'positive' ? axis.positive : oppositeSide[axis.positive];
  if (side === expected) return undefined;
  return { subject, finding: { kind: 'side-clash', axis: axis.letter, side, end, positive: axis.positive } };
}
