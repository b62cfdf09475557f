import { oneContact } from '../parts/contacts.ts';
import { toGround } from '../parts/to-ground.ts';
import type { Circuit } from '../template.ts';

/** A further contact of the stop button that only tells the controller; the power is removed elsewhere. */
export const stopStatus: Circuit = {
  name: 'stop-status',
  kinds: ['contact to ground'],
  fits: ({ duty, contact }) => duty.includes('stop') && contact !== 'normally open',
  template: (given) =>
    toGround(
      { device: 'stop contact', contact: 'normally closed', joined: 'single', contacts: oneContact },
      given,
    ),
};
