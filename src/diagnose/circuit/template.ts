import type { Contact, Switch as MachineSwitch } from '../../model/machine.ts';
import type { Device, InputFamily, Joins, Stage, WiringName } from '../../model/wiring-names.ts';
import type { Network, Node } from './network.ts';
import type { PinLimits } from './pin-limits.ts';
import type { Given, Numbers, Values } from './values.ts';

export type KnownContact = Exclude<Contact, 'unknown'>;

/** One wiring as data. Adding one is a file that exports this and a line in the registry. */
export interface Circuit {
  readonly name: WiringName;
  /** What a machine file calls it, where it can be named there. */
  readonly kinds: readonly string[];
  /** Whether it is the one meant, among those of its kind. */
  readonly fits: (declared: Declared) => boolean;
  /** `family`: the kind of input asked for; undefined is the usual one. */
  readonly template: (given: Given, family?: InputFamily) => Template;
}

export interface Declared {
  readonly contact: Contact;
  readonly sensor: MachineSwitch['sensor'];
  readonly duty: MachineSwitch['duty'];
  readonly joined: 'single' | 'series' | 'parallel';
}

/** What a circuit is made of once it is known which supply it has. */
export interface Template {
  readonly joins: Joins;
  readonly device: Device;
  readonly stage: Stage;
  readonly joined: 'single' | 'series' | 'parallel';
  /** What it conducts like at rest where nothing else is said. */
  readonly contact: KnownContact;
  readonly values: Values;
  /** The first is the usual one. */
  readonly families: readonly [InputFamily, ...InputFamily[]];
  /** Supplies and what all inputs of the controller share. */
  readonly rails: (v: Numbers) => Network;
  /** One input from its pin to its switch. */
  readonly channel: (v: Numbers, family: InputFamily) => Network;
  readonly limits: (v: Numbers, family: InputFamily) => PinLimits;
  /** The two nodes a link at the controller or at the switch joins: what the closed contact would join. */
  readonly link: { readonly controller: readonly [Node, Node]; readonly switch: readonly [Node, Node] };
  /** The + conductor that can touch the signal. */
  readonly plus: Node;
}
