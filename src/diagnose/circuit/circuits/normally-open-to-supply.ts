import { pair } from '../parts/cable.ts';
import { oneContact } from '../parts/contacts.ts';
import { toSupply } from '../parts/to-supply.ts';
import { dryContact } from '../parts/usual-values.ts';
import type { Circuit } from '../template.ts';

/** A contact that joins a pulled-down terminal to + when pressed; above logic level a divider takes it down. */
export const normallyOpenToSupply: Circuit = {
  name: 'normally-open-to-supply',
  kinds: ['contact to supply'],
  fits: ({ contact }) => contact === 'normally open',
  template: (given) =>
    toSupply(
      {
        device: 'contact',
        contact: 'normally open',
        joined: 'single',
        values: dryContact,
        network: (v) => [...pair(v, 'field +'), ...oneContact(v)],
        link: { controller: ['terminal', 'field +'], switch: ['switch signal', 'switch common'] },
      },
      given,
      5,
    ),
};
