import { oneContact } from '../parts/contacts.ts';
import { toGround } from '../parts/to-ground.ts';
import type { Circuit } from '../template.ts';

/** A contact that joins a pulled-up terminal to 0 V when pressed. */
export const normallyOpenToGround: Circuit = {
  name: 'normally-open-to-ground',
  kinds: ['contact to ground'],
  fits: ({ contact }) => contact === 'normally open',
  template: (given) =>
    toGround({ device: 'contact', contact: 'normally open', joined: 'single', contacts: oneContact }, given),
};
