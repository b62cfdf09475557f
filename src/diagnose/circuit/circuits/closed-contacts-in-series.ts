import { inSeries } from '../parts/contacts.ts';
import { toGround } from '../parts/to-ground.ts';
import type { Circuit } from '../template.ts';

/** Several closed contacts, one after the other, on one terminal: any press and any break looks the same. */
export const closedContactsInSeries: Circuit = {
  name: 'closed-contacts-in-series',
  kinds: ['contact to ground'],
  fits: ({ joined }) => joined === 'series',
  template: (given) =>
    toGround({ device: 'contact', contact: 'normally closed', joined: 'series', contacts: inSeries }, given),
};
