import { namesToTry } from '../model/nearest.ts';
import { ToolError } from '../model/tool-error.ts';
import { type FaultName, faultNames, faults } from './faults.ts';
import type { World } from './world.ts';

/**
 * Plants a fault spelled `<fault>`, `<fault>:<input>` or `<fault>:<input>,<input>`. Throws a ToolError that says what is known
 * where the fault is not, has too few or too many names, or names what this machine has not.
 */
export function plant(world: World, spelled: string): void {
  const [name = '', ...rest] = spelled.trim().split(':');
  if (!isFault(name))
    throw new ToolError(
      'wrong-usage',
      `No such fault: ${name}.`,
      namesToTry(name, faultNames, '`tellwire bench --faults` lists them all.'),
    );
  const names =
    rest.length === 0
      ? []
      : rest
          .join(':')
          .split(',')
          .map((each) => each.trim());
  const { takes } = faults[name];
  const wanted = takes === '' ? 0 : takes.split(',').length;
  if (names.length !== wanted || names.includes(''))
    throw new ToolError(
      'wrong-usage',
      `Fault ${spelled} names ${names.filter((each) => each !== '').length || 'nothing'} after its colon.`,
      `Write ${takes === '' ? name : `${name}:${takes}`}.`,
    );
  faults[name].plant(world, names);
}

const isFault = (name: string): name is FaultName => Object.hasOwn(faults, name);
