import { circuitValues } from '../../model/machine-file/circuit-kinds.ts';
import type { Device, InputFamily, WiringName } from '../../model/wiring-names.ts';
import type { WiringAsStudied } from '../../model/wiring-study.ts';
import { quantityText } from './quantities.ts';

/** What each wiring is, in the words of whoever wires it. */
export const wiringWords = {
  'normally-open-to-ground': 'normally open contact to 0 V, pull-up at the controller',
  'normally-closed-to-ground': 'normally closed contact to 0 V, pull-up at the controller',
  'normally-open-to-supply': 'normally open contact to +, pull-down or divider at the controller',
  'normally-closed-to-supply': 'normally closed contact to +, pull-down or divider at the controller',
  'contact-into-fed-optocoupler': 'contact from + into an optocoupler on 0 V',
  'contact-into-drawn-optocoupler': 'contact to 0 V out of an optocoupler on +',
  'npn-into-pull-up': 'NPN sensor into a pulled-up input',
  'npn-into-optocoupler': 'NPN sensor out of an optocoupler on +',
  'pnp-into-optocoupler': 'PNP sensor into an optocoupler on 0 V',
  'pnp-into-divider': 'PNP sensor into a divider',
  'pnp-into-pull-up': 'PNP sensor into a pulled-up input: a mismatch',
  'npn-into-pull-down': 'NPN sensor into a pulled-down input: a mismatch',
  'npn-into-fed-optocoupler': 'NPN sensor into an optocoupler on 0 V: a mismatch',
  'pnp-into-drawn-optocoupler': 'PNP sensor into an optocoupler on +: a mismatch',
  'two-wire-into-optocoupler': 'two-wire sensor from + into an optocoupler on 0 V',
  'hall-module': 'Hall module, open collector, into a pulled-up input',
  'slotted-optical-module': 'slotted optical pair into a pulled-up input',
  'closed-contacts-in-series': 'normally closed contacts in series to 0 V, computed with three',
  'open-contacts-in-parallel': 'normally open contacts in parallel to 0 V, computed with three',
  'supervised-contact': 'normally closed contact with end-of-line resistors, window input',
  'touch-plate': 'touch plate with a clip on the tool',
  'touch-probe': 'touch probe, three normally closed pairs in series',
  'stop-status': 'status contact of a stop button, normally closed, to 0 V',
  'door-status': 'status contact of a door, normally closed, to 0 V',
} as const satisfies Record<WiringName, string>;

export const familyWords = {
  'cmos 5 V': '5 V logic (low to 0.3, high from 0.6 of the supply)',
  'cmos 3.3 V': '3.3 V logic (low to 0.8 V, high from 0.7 of the supply)',
  lvttl: 'LVTTL (low to 0.8 V, high from 2.0 V)',
  ttl: 'TTL (low to 0.8 V, high from 2.0 V)',
  schmitt: 'Schmitt trigger, HC family',
  'optocoupler loop': 'plain optocoupler (surely off to 0.5 mA, surely on from 2 mA)',
  'IEC 61131-2 type 1': 'IEC 61131-2 type 1',
  'IEC 61131-2 type 2': 'IEC 61131-2 type 2',
  'IEC 61131-2 type 3': 'IEC 61131-2 type 3',
  window: 'window input with four bands',
} as const satisfies Record<InputFamily, string>;

export const deviceWords = {
  contact: 'switch',
  'stop contact': 'stop button',
  'door contact': 'door switch',
  npn: 'NPN sensor',
  pnp: 'PNP sensor',
  'two-wire': 'two-wire sensor',
  hall: 'Hall module',
  optical: 'optical module',
  'touch plate': 'plate and tool',
  'touch probe': 'touch probe',
} as const satisfies Record<Device, string>;

/** "10 kohm", "24 V", "none". */
export function valueText(name: string, value: number): string {
  const measure = Object.hasOwn(circuitValues, name)
    ? circuitValues[name as keyof typeof circuitValues]
    : 'resistance';
  return Number.isFinite(value) ? quantityText(value, measure) : 'none';
}

/** "10 kohm (9.5 kohm to 10.5 kohm)". */
export const rangeText = ({ name, nominal, low, high }: WiringAsStudied['values'][number]): string =>
  low === high
    ? valueText(name, nominal)
    : `${valueText(name, nominal)} (${valueText(name, low)} to ${valueText(name, high)})`;

/** A candidate told by what sets it apart: its wiring, its contact where the wiring leaves that open, and the values given. */
export function candidateText(wiring: WiringAsStudied): string {
  const given = wiring.values
    .filter((each) => each.given)
    .map((each) => `${each.name} ${valueText(each.name, each.nominal)}`);
  const contact = wiringWords[wiring.name].includes(wiring.contact) ? [] : [wiring.contact];
  const input = wiring.input === undefined ? [] : [wiring.input];
  return [...input, wiringWords[wiring.name], ...contact, ...given].join(', ');
}
