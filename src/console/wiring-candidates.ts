import { circuitNamed } from '../diagnose/circuit/registry.ts';
import { wiringOfSwitch } from '../diagnose/circuit/select.ts';
import type { KnownContact } from '../diagnose/circuit/template.ts';
import type { Given, ValueName } from '../diagnose/circuit/values.ts';
import { wiringOf } from '../diagnose/circuit/wiring.ts';
import type { StudyOf } from '../diagnose/fault-finding/study.ts';
import { allSwitches, type Machine } from '../model/machine.ts';
import { circuitValues } from '../model/machine-file/circuit-kinds.ts';
import { namesToTry } from '../model/nearest.ts';
import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { type InputFamily, inputFamilies, wiringNames } from '../model/wiring-names.ts';
import { listed } from '../words/figures.ts';
import { switchesToTry } from './options.ts';
import { cableGiven, valuesIn } from './wiring-values.ts';

/** Flags as commander hands them over: texts, not yet looked at; values under their names in one word. */
export interface WiringFlags {
  readonly machine?: string;
  readonly compare?: boolean;
  readonly contact?: string;
  readonly input?: string;
  readonly core?: string;
  readonly length?: string;
  readonly format: string;
  readonly json?: boolean;
  readonly [value: string]: unknown;
}

/** What someone who chooses a wiring would look at. */
const usual = [
  'normally-open-to-ground',
  'normally-closed-to-ground',
  'normally-closed-to-ground:pull-up=2.2kohm',
  'normally-closed-to-ground:pull-up=35kohm',
  'normally-open-to-supply:supply=24V',
  'normally-closed-to-supply:supply=24V',
  'contact-into-fed-optocoupler:contact=normally closed',
  'contact-into-fed-optocoupler:contact=normally open',
  'pnp-into-optocoupler',
] as const;

export const usualCandidates: readonly string[] = usual;

/** A wiring or an input, with the values of its own and those of the whole command line. Throws ToolError `wrong-usage`. */
export function candidate(text: string, flags: WiringFlags, machine: Machine | undefined): StudyOf {
  const [name = '', own = ''] = text.split(/:(.*)/s);
  const { contact, ...values } = valuesIn(own, text);
  const given: Given = { ...cableGiven(flags.core, flags.length), ...flagValues(flags), ...values };
  const choice = {
    contact: contactIn(contact ?? flags.contact),
    family: familyIn(flags.input),
  };
  if (machine) return ofMachine(name, machine, given, choice.family);
  const known = wiringNames.find((each) => each === name);
  if (known === undefined)
    throw new ToolError(
      'wrong-usage',
      `There is no wiring ${visible(name)}.`,
      `${namesToTry(name, wiringNames, '`tellwire wiring` lists them all.')} With --machine, an input of the file.`,
    );
  const wiring = wiringOf(circuitNamed(known), { given, ...choice });
  refuseUnfit(wiring.unused, wiring.family, wiring.template.families, name);
  return { wiring, given: Object.keys(given) as ValueName[] };
}

function ofMachine(name: string, machine: Machine, given: Given, family: InputFamily | undefined): StudyOf {
  const found = allSwitches(machine).find(({ subject, input }) => subject === name || input === name);
  if (!found)
    throw new ToolError(
      'wrong-usage',
      `The machine file has no input ${visible(name)}.`,
      switchesToTry(name, machine),
    );
  const declared = wiringOfSwitch(machine, found, given, family);
  if (!declared)
    throw new ToolError(
      'wrong-usage',
      `The machine file does not say what circuit ${visible(name)} has.`,
      'Add its circuit, such as circuit: { kind: contact to ground, supply: 5 V, pull-up: 10 kohm }.',
    );
  refuseUnfit([], declared.wiring.family, declared.wiring.template.families, name);
  return { ...declared, input: found.subject };
}

function refuseUnfit(
  unused: readonly string[],
  family: InputFamily,
  families: readonly InputFamily[],
  name: string,
): void {
  if (unused.length > 0)
    throw new ToolError('wrong-usage', `${name} has no ${listed(unused)}.`, `Leave ${listed(unused)} out.`);
  if (!families.includes(family))
    throw new ToolError(
      'wrong-usage',
      `${name} is not read by an input of the kind ${family}.`,
      `There are ${listed(families)}.`,
    );
}

const flagValues = (flags: WiringFlags): Given => {
  const texts = Object.keys(circuitValues).flatMap((name) => {
    const value = flags[flagOf(name)];
    return typeof value === 'string' ? [`${name}=${value}`] : [];
  });
  const { contact: _, ...given } = valuesIn(texts.join(','), texts.join(' '));
  return given;
};

/** The name commander gives the flag --end-resistor: "endResistor". */
const flagOf = (name: string): string =>
  name.replaceAll(/[- ](.)/g, (_, letter: string) => letter.toUpperCase());

function contactIn(text: string | undefined): KnownContact | undefined {
  if (text === undefined) return undefined;
  const found = (['normally open', 'normally closed'] as const).find(
    (each) => each === text.replace('-', ' '),
  );
  if (found) return found;
  throw new ToolError(
    'wrong-usage',
    `The contact ${visible(text)} is not known.`,
    'normally open or normally closed.',
  );
}

function familyIn(text: string | undefined): InputFamily | undefined {
  if (text === undefined) return undefined;
  const found = inputFamilies.find((each) => each.toLowerCase() === text.toLowerCase());
  if (found) return found;
  throw new ToolError(
    'wrong-usage',
    `There is no kind of input ${visible(text)}.`,
    namesToTry(text, inputFamilies, `There are ${listed(inputFamilies)}.`),
  );
}
