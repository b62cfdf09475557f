import { inputOf, type Machine, type Subject, type Switch, switchOf } from '../model/machine.ts';
import { visible } from '../model/visible.ts';

/** How a person works a switch: the verb depends on what the thing is. */
export type Handling = 'lever' | 'stop' | 'door' | 'probe' | 'steel' | 'magnet' | 'slot';

export function handlingOf(found: Switch | undefined): Handling {
  if (found?.duty.includes('stop')) return 'stop';
  if (found?.duty.includes('door')) return 'door';
  if (found?.duty.includes('probe')) return 'probe';
  if (found?.sensor === 'npn' || found?.sensor === 'pnp' || found?.sensor === 'two-wire') return 'steel';
  if (found?.sensor === 'hall') return 'magnet';
  return found?.sensor === 'optical' ? 'slot' : 'lever';
}

const nouns = {
  lever: 'switch',
  stop: 'stop button',
  door: 'door switch',
  probe: 'probe',
  steel: 'sensor',
  magnet: 'magnet sensor',
  slot: 'slot sensor',
} satisfies Record<Handling, string>;

/** Where it is, in the person's own words; failing these, in what the machine file says of axis, side and end; undefined where it says nothing. */
export function placeOf(subject: Subject, machine: Machine): string | undefined {
  const found = switchOf(machine, subject);
  if (found?.place !== undefined) return visible(found.place);
  const side = found?.side === undefined ? '' : `${found.side} `;
  if (found?.axis !== undefined && (side !== '' || found.end !== undefined))
    return side === '' ? `${found.end} end of ${found.axis}` : `${side}end of ${found.axis}`;
  return undefined;
}

/** "the switch x-home (left end of the long axis)"; "the probe (on its coiled lead)" where its name is probe. */
export function named(subject: Subject, machine: Machine): string {
  const place = placeOf(subject, machine);
  const noun = nouns[handlingOf(switchOf(machine, subject))];
  // "the probe probe" helps nobody.
  const name = noun.split(' ').includes(subject) ? '' : ` ${visible(subject)}`;
  return `the ${noun}${name}${place === undefined ? '' : ` (${place})`}`;
}

/** The fewest words that point at it from two metres: the place, else the name. */
export const shortly = (subject: Subject, machine: Machine): string =>
  placeOf(subject, machine) ?? visible(subject);

/** "terminal IN1, connector J4", or an empty text where the file names neither. */
export function terminalOf(subject: Subject, machine: Machine): string {
  const found = switchOf(machine, subject);
  const input = found && inputOf(machine, found.input);
  return [
    input?.terminal === undefined ? '' : `terminal ${visible(input.terminal)}`,
    input?.connector === undefined ? '' : `connector ${visible(input.connector)}`,
  ]
    .filter((part) => part !== '')
    .join(', ');
}

/** The other inputs of its connector: they drop when it is pulled at the controller. */
export function sharesConnector(subject: Subject, machine: Machine): readonly string[] {
  const found = switchOf(machine, subject);
  const input = found && inputOf(machine, found.input);
  if (input?.connector === undefined) return [];
  return machine.inputs
    .filter((each) => each !== input && each.connector === input.connector)
    .map((each) => each.name);
}
