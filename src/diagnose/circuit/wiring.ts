import type { InputFamily } from '../../model/wiring-names.ts';
import type { UnitPosition } from './network.ts';
import type { Circuit, KnownContact, Template } from './template.ts';
import { type Given, type Numbers, nominal, type ValueName, type Values, withGiven } from './values.ts';

/** One circuit with its values, its contact and its kind of input settled: what faults are put into. */
export interface Wiring {
  readonly circuit: Circuit;
  readonly template: Template;
  readonly contact: KnownContact;
  readonly family: InputFamily;
  readonly values: Values;
  /** Values that were given and that this circuit has no part for. */
  readonly unused: readonly ValueName[];
}

export interface Choice {
  readonly given?: Given;
  readonly contact?: KnownContact | undefined;
  readonly family?: InputFamily | undefined;
}

/** What is left out is the circuit's usual choice. */
export function wiringOf(circuit: Circuit, { given = {}, contact, family }: Choice = {}): Wiring {
  const template = circuit.template(given, family);
  return {
    circuit,
    template,
    contact: contact ?? template.contact,
    family: family ?? template.families[0],
    values: withGiven(template.values, given),
    unused: (Object.keys(given) as ValueName[]).filter((name) => !(name in template.values)),
  };
}

/** One board of a wiring: its part values, and where its thresholds stand; `any` asks what is sure for every unit. */
export interface World {
  readonly numbers: Numbers;
  readonly unit: UnitPosition | 'any';
}

export const nominalWorld = (wiring: Wiring): World => ({ numbers: nominal(wiring.values), unit: 'any' });
