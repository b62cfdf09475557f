import { oneContact } from '../parts/contacts.ts';
import { toGround } from '../parts/to-ground.ts';
import type { Circuit } from '../template.ts';

/** A contact that holds a pulled-up terminal at 0 V until it is pressed. */
export const normallyClosedToGround: Circuit = {
  name: 'normally-closed-to-ground',
  kinds: ['contact to ground'],
  fits: () => true,
  template: (given) =>
    toGround(
      { device: 'contact', contact: 'normally closed', joined: 'single', contacts: oneContact },
      given,
    ),
};
