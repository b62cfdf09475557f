import { allSwitches, type Switch } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';

/** The switches a check is about, in the order of the file. */
export const switchesAsked = ({ machine, only }: Scene): readonly Switch[] =>
  allSwitches(machine).filter((each) => !only || only.includes(each.subject) || only.includes(each.input));
