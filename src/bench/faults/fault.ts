import { namesToTry } from '../../model/nearest.ts';
import { ToolError } from '../../model/tool-error.ts';
import type { Contact } from '../contact.ts';
import type { FieldLine } from '../field-line.ts';
import type { InputStage } from '../input-stage.ts';
import type { World } from '../world.ts';

/** One thing that can be wrong with the machine. Its name and words are for whoever plants it; they never cross the stream. */
export interface Fault {
  /** What is named after the colon, as a list of faults shows it; empty where the fault is the controller's own. */
  readonly takes:
    | ''
    | '<switch>'
    | '<input>'
    | '<input>,<input>'
    | '<connector>'
    | '<axis>'
    | '<axis>,<axis>';
  readonly description: string;
  /** Can only be planted where one axis has two motors, or turns: not on the usual machine. */
  readonly needs?: 'portal';
  /** Throws a ToolError where a name is not one of this machine's. */
  plant(world: World, names: readonly string[]): void;
}

export interface Line {
  readonly line: FieldLine;
  /** The terminal it is drawn on. */
  readonly stage: InputStage;
}
export type Switch = Line & { readonly contact: Contact };

export function onSwitch(description: string, plant: (world: World, found: Switch) => void): Fault {
  return {
    takes: '<switch>',
    description,
    plant: (world, [name = '']) => plant(world, switchNamed(world, name)),
  };
}

export function onInput(description: string, plant: (world: World, found: Line) => void): Fault {
  return {
    takes: '<input>',
    description,
    plant: (world, [name = '']) => plant(world, lineNamed(world, name)),
  };
}

export function onTwo(description: string, plant: (world: World, one: Line, other: Line) => void): Fault {
  return {
    takes: '<input>,<input>',
    description,
    plant(world, [first = '', second = '']) {
      const one = lineNamed(world, first);
      const other = lineNamed(world, second);
      if (one.line === other.line)
        throw new ToolError('wrong-usage', `Input named twice: ${first}.`, 'Name two different inputs.');
      plant(world, one, other);
    },
  };
}

export function onConnector(description: string, plant: (world: World, connector: string) => void): Fault {
  return {
    takes: '<connector>',
    description,
    plant(world, [name = '']) {
      const connectors = [...new Set(world.truth.inputs.map(({ connector }) => connector))];
      if (!connectors.includes(name)) throw unknown('connector', name, connectors);
      plant(world, name);
    },
  };
}

export const onController = (description: string, plant: (world: World) => void): Fault => ({
  takes: '',
  description,
  plant,
});

function lineNamed(world: World, name: string): Line {
  const line = world.wiring.line(name);
  const stage = world.stage(name);
  if (!line || !stage)
    throw unknown(
      'input',
      name,
      world.stages.map((each) => each.name),
    );
  return { line, stage };
}

/** An input with one switch may be named for it; one with several needs `input/switch`. */
function switchNamed(world: World, name: string): Switch {
  for (const line of world.wiring.lines) {
    const [first] = line.legs;
    const leg = line.leg(name) ?? (line.truth.name === name && line.legs.length === 1 ? first : undefined);
    const stage = world.stage(line.truth.name);
    if (leg && stage) return { line, stage, contact: leg.contact };
  }
  throw unknown(
    'switch',
    name,
    world.contacts.map(({ truth }) => truth.subject),
  );
}

const unknown = (what: string, name: string, known: readonly string[]): ToolError =>
  new ToolError(
    'wrong-usage',
    name === '' ? `A fault without its ${what}.` : `No such ${what} on the bench: ${name}.`,
    namesToTry(name, known, `Name one of: ${known.join(', ')}.`),
  );
