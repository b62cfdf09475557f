import { pair } from '../parts/cable.ts';
import { oneContact } from '../parts/contacts.ts';
import { toSupply } from '../parts/to-supply.ts';
import { dryContact } from '../parts/usual-values.ts';
import type { Circuit } from '../template.ts';

/** A contact that holds a pulled-down terminal at + until it is pressed. */
export const normallyClosedToSupply: Circuit = {
  name: 'normally-closed-to-supply',
  kinds: ['contact to supply'],
  fits: () => true,
  template: (given) =>
    toSupply(
      {
        device: 'contact',
        contact: 'normally closed',
        joined: 'single',
        values: dryContact,
        network: (v) => [...pair(v, 'field +'), ...oneContact(v)],
        link: { controller: ['terminal', 'field +'], switch: ['switch signal', 'switch common'] },
      },
      given,
      5,
    ),
};
