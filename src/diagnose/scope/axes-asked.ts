import { type Axis, allSwitches } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';

/** The axes a check is about: all of the file, or those of the switches that were asked for. */
export const axesAsked = ({ machine, only }: Scene): readonly Axis[] =>
  machine.axes.filter(
    ({ letter }) =>
      !only ||
      allSwitches(machine).some(
        (each) => each.axis === letter && (only.includes(each.subject) || only.includes(each.input)),
      ),
  );

export const unitOf = ({ kind }: Axis): 'mm' | 'degrees' => (kind === 'rotary' ? 'degrees' : 'mm');
