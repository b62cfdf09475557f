import type { Element, Network, Node } from './network.ts';
import { resistor } from './network.ts';
import { pressed } from './parts/contacts.ts';
import type { Actuation, State } from './state.ts';
import type { KnownContact } from './template.ts';
import type { Wiring, World } from './wiring.ts';

/** One input as it stands, sound or not: faults change rigs, states are looked at on them. */
export interface Rig {
  readonly network: Network;
  readonly conducts: Readonly<Record<Actuation, boolean>>;
  readonly neighbourConducts: Readonly<Record<State['neighbour'], boolean>>;
  readonly setting: Setting;
  /** A pin that no longer follows its voltage. */
  readonly pin: 'follows' | 'reads open' | 'reads conducting';
}

/** What the controller was told to make of the input. */
export interface Setting {
  readonly enabled: boolean;
  readonly inverted: boolean;
  /** How long a level must last to count, ms; 5 is common. */
  readonly filterMs: number;
}

/** How the contact goes when it is worked: a normally open one conducts when pressed. */
const conductsAs = (contact: KnownContact): Rig['conducts'] => {
  const whenPressed = contact === 'normally open';
  return {
    rest: !whenPressed,
    'pressed by hand': whenPressed,
    'pressed by machine': whenPressed,
    tapped: whenPressed,
    'let go': !whenPressed,
  };
};

export function soundRig({ template, contact, family }: Wiring, { numbers }: World): Rig {
  const conducts = conductsAs(contact);
  return {
    network: [...template.rails(numbers), ...template.channel(numbers, family)],
    conducts,
    neighbourConducts: { rest: conducts.rest, pressed: conducts['pressed by hand'] },
    setting: { enabled: true, inverted: false, filterMs: 5 },
    pin: 'follows',
  };
}

/** The nodes all inputs of a controller share; the others are an input's own. */
const shared: readonly Node[] = ['0 V', 'field 0 V', 'field +', 'logic +', 'field source'];
export const neighbourOf = (name: string): string => (shared.includes(name) ? name : `neighbour ${name}`);

/** A second, sound input of the same kind beside this one; only faults between inputs need it. */
export function withNeighbour(rig: Rig, { template, family }: Wiring, { numbers }: World): Rig {
  if (rig.network.some(({ name }) => name === neighbourOf(pressed))) return rig;
  const beside = template.channel(numbers, family).map((element): Element => {
    const moved = {
      ...element,
      name: neighbourOf(element.name),
      from: neighbourOf(element.from),
      to: neighbourOf(element.to),
    };
    if (moved.kind !== 'switch' || moved.when === undefined) return moved;
    const when = moved.when.map((control) =>
      control.by === 'current'
        ? { ...control, through: neighbourOf(control.through) }
        : { ...control, plus: neighbourOf(control.plus), minus: neighbourOf(control.minus) },
    );
    return { ...moved, when };
  });
  return { ...rig, network: [...rig.network, ...beside] };
}

/** A short wire between two terminals, ohm. */
const linkOhms = 0.05;
const plugOf = { 'out at controller': 'plug', 'out at switch': 'clamp' } as const;

/** The network while a state lasts: contacts where they stand, plugs out, links in. */
export function standing(rig: Rig, state: State, { template, contact }: Wiring): Network {
  const out = state.plug === 'in' ? undefined : plugOf[state.plug];
  const stays = ({ name }: Element) =>
    !['signal', 'common', 'supply'].some((core) => name === `${core} ${out}`);
  const network = rig.network.filter(stays).map((element): Element => {
    if (element.kind !== 'switch') return element;
    if (element.name === pressed) return { ...element, closed: rig.conducts[state.actuation] };
    if (element.name === neighbourOf(pressed))
      return { ...element, closed: rig.neighbourConducts[state.neighbour] };
    return isFurtherContact(element.name) ? { ...element, closed: contact === 'normally closed' } : element;
  });
  const [from, to] = template.link[state.link === 'at switch' ? 'switch' : 'controller'];
  return state.link === 'none' ? network : [...network, resistor('link', from, to, linkOhms)];
}

/** The other contacts of a series or of a parallel line stay at rest. */
const isFurtherContact = (name: string): boolean => /^(?:neighbour )?contact \d$/.test(name);
