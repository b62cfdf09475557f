import { pair } from '../parts/cable.ts';
import { oneContact } from '../parts/contacts.ts';
import { intoFed } from '../parts/into-coupler.ts';
import { dryContact } from '../parts/usual-values.ts';
import type { Circuit } from '../template.ts';

/** A contact from the field's + feeds the light of an isolated input. */
export const contactIntoFedOptocoupler: Circuit = {
  name: 'contact-into-fed-optocoupler',
  kinds: ['optocoupler fed from supply'],
  fits: () => true,
  template: (_given, family) =>
    intoFed(
      {
        device: 'contact',
        contact: 'normally closed',
        joined: 'single',
        values: dryContact,
        network: (v) => [...pair(v, 'field +'), ...oneContact(v)],
        link: { controller: ['terminal', 'field +'], switch: ['switch signal', 'switch common'] },
      },
      family,
    ),
};
