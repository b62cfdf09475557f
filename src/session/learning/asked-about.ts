import type { InputName, Machine, Subject } from '../../model/machine.ts';
import type { LinesMeant } from '../../model/stream-description.ts';

/** The switch that stands for an input in an ask. */
export const subjectFor = (machine: Machine, name: InputName): Subject =>
  machine.inputs.find((input) => input.name === name)?.switches[0].subject ?? name;

/** A value's name for a person, and in which lines where there are several kinds. */
export function labelOfField(field: string, { values, begins, has }: LinesMeant): string {
  const where = values ? Object.values(values).join(' ') : (begins ?? has);
  return where === undefined || where === field ? field : `${field} (${where})`;
}
