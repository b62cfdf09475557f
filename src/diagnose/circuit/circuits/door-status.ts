import { oneContact } from '../parts/contacts.ts';
import { toGround } from '../parts/to-ground.ts';
import type { Circuit } from '../template.ts';

/** The door forces the contact open; the copy tells the controller and is no guard lock. */
export const doorStatus: Circuit = {
  name: 'door-status',
  kinds: ['contact to ground'],
  fits: ({ duty, contact }) => duty.includes('door') && contact !== 'normally open',
  template: (given) =>
    toGround(
      { device: 'door contact', contact: 'normally closed', joined: 'single', contacts: oneContact },
      given,
    ),
};
