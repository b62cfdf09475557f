import { inputOf, type Machine, type Switch, switchOf } from '../../model/machine.ts';
import type { OutItem } from '../../model/session-facts.ts';

/** Whether a plug that is out keeps this switch from answering: its own input's, and at the controller any of its connector's. */
export function takesAlong({ subject, at }: OutItem, pressed: Switch, machine: Machine): boolean {
  const own = inputOf(machine, switchOf(machine, subject)?.input ?? '');
  if (subject === pressed.subject || own?.name === pressed.input) return true;
  const connector = inputOf(machine, pressed.input)?.connector;
  return at === 'controller' && connector !== undefined && connector === own?.connector;
}
