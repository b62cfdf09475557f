import type { Input, Machine, Switch } from '../../model/machine.ts';
import { circuitValues } from '../../model/machine-file/circuit-kinds.ts';
import { inBaseUnit, measures } from '../../model/machine-file/quantity.ts';
import type { InputFamily } from '../../model/wiring-names.ts';
import { circuitsOfKind } from './registry.ts';
import type { Circuit, Declared } from './template.ts';
import type { Given, ValueName } from './values.ts';
import { type Wiring, wiringOf } from './wiring.ts';

/** A wiring as a machine file declares it, and what of it the file leaves open. */
export interface DeclaredWiring {
  readonly wiring: Wiring;
  readonly given: readonly ValueName[];
  readonly contactAssumed: boolean;
}

/** Undefined where the file names no circuit, or one that is not known. `told`: what the command line says instead. */
export function wiringOfSwitch(
  machine: Machine,
  of: Switch,
  told: Given = {},
  family?: InputFamily,
): DeclaredWiring | undefined {
  const input = machine.inputs.find(({ name }) => name === of.input);
  const circuit = circuitOf(of, input);
  if (circuit === undefined || of.circuit === undefined) return undefined;
  const given = { ...givenIn(of.circuit.values, of.circuit.supply), ...told };
  const contact = of.contact === 'unknown' ? undefined : of.contact;
  return {
    wiring: wiringOf(circuit, { given, contact, family }),
    given: Object.keys(given) as ValueName[],
    contactAssumed: contact === undefined,
  };
}

function circuitOf(
  { circuit, contact, sensor, duty }: Switch,
  input: Input | undefined,
): Circuit | undefined {
  const candidates = circuitsOfKind(circuit?.kind ?? '');
  const declared: Declared = { contact, sensor, duty, joined: input?.joined ?? 'single' };
  return candidates.find(({ fits }) => fits(declared)) ?? candidates[0];
}

/** The values of a file in base units; its texts were checked when it was read. */
function givenIn(values: Readonly<Record<string, string>>, supply: number | undefined): Given {
  const told = Object.entries(circuitValues).flatMap(([name, measure]) => {
    const text = values[name];
    const value = text === undefined ? undefined : inBaseUnit(measures[measure], text, 1);
    return value === undefined ? [] : [[name, value] as const];
  });
  return { ...Object.fromEntries(told), ...(supply === undefined ? {} : { supply }) };
}
