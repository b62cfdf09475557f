import type { InputName, Machine, Subject } from '../../model/machine.ts';

/** The switch that stands for an input in an ask. */
export const subjectFor = (machine: Machine, name: InputName): Subject =>
  machine.inputs.find((input) => input.name === name)?.switches[0].subject ?? name;
