import { pair } from '../parts/cable.ts';
import { oneContact } from '../parts/contacts.ts';
import { intoDrawn } from '../parts/into-coupler.ts';
import { dryContact } from '../parts/usual-values.ts';
import type { Circuit } from '../template.ts';

/** A contact to the field's 0 V draws current through the light of an isolated input. */
export const contactIntoDrawnOptocoupler: Circuit = {
  name: 'contact-into-drawn-optocoupler',
  kinds: ['optocoupler drawn to ground'],
  fits: () => true,
  template: (_given, family) =>
    intoDrawn(
      {
        device: 'contact',
        contact: 'normally closed',
        joined: 'single',
        values: dryContact,
        network: (v) => [...pair(v, 'field 0 V'), ...oneContact(v)],
      },
      family,
    ),
};
