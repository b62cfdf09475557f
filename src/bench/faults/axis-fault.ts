import { ToolError } from '../../model/tool-error.ts';
import type { Axis } from '../axis.ts';
import type { Dog } from '../dog.ts';
import type { World } from '../world.ts';
import { type Fault, onSwitch, type Switch } from './fault.ts';

export function onAxis(description: string, plant: (axis: Axis, world: World) => void): Fault {
  return {
    takes: '<axis>',
    description,
    plant: (world, [letter = '']) => plant(axisNamed(world, letter), world),
  };
}

export function onTwoAxes(description: string, plant: (one: Axis, other: Axis, world: World) => void): Fault {
  return {
    takes: '<axis>,<axis>',
    description,
    plant(world, [first = '', second = '']) {
      const one = axisNamed(world, first);
      const other = axisNamed(world, second);
      if (one === other)
        throw new ToolError('wrong-usage', `Axis named twice: ${first}.`, 'Name two different axes.');
      plant(one, other, world);
    },
  };
}

/** The second motor of a beam, at its second side. */
export function onSecondMotor(description: string, plant: (axis: Axis, world: World) => void): Fault {
  const fault = onAxis(description, (axis, world) => {
    if (axis.truth.motors < 2)
      throw new ToolError(
        'wrong-usage',
        `Axis ${axis.letter} has one motor.`,
        'Name an axis with a motor at either side.',
      );
    plant(axis, world);
  });
  return { ...fault, needs: 'portal' };
}

/** A switch that an axis works, and what works it. */
export const onDog = (
  description: string,
  plant: (dog: Dog, axis: Axis, found: Switch, world: World) => void,
): Fault =>
  onSwitch(description, (world, found) => {
    const dog = world.dogs.find(({ contact }) => contact === found.contact);
    const axis = world.axes.find(({ letter }) => letter === found.contact.truth.dog?.axis);
    if (!dog || !axis)
      throw new ToolError(
        'wrong-usage',
        `No axis works the switch ${found.contact.truth.subject}.`,
        'Name a switch at the end of an axis.',
      );
    plant(dog, axis, found, world);
  });

/** Metal to metal, mm; one turn of an axis that has no ends. */
export const spanOf = ({ truth: { turns, stops } }: Axis): number => (turns ? 360 : stops[1] - stops[0]);

/** The dog that an axis homes with. */
export function homeDog({ carriage, letter, homing }: Axis): Dog {
  const dog = carriage.dogs.find(({ contact }) => homing.inputs.includes(contact.input));
  if (!dog)
    throw new ToolError('wrong-usage', `Axis ${letter} works no home switch.`, 'Name an axis that does.');
  return dog;
}

function axisNamed(world: World, letter: string): Axis {
  const axis = world.axes.find((each) => each.letter === letter);
  if (axis) return axis;
  throw new ToolError(
    'wrong-usage',
    letter === '' ? 'A fault without its axis.' : `No such axis on the bench: ${letter}.`,
    `Name one of: ${world.axes.map((each) => each.letter).join(', ')}.`,
  );
}
