import { inParallel } from '../parts/contacts.ts';
import { toGround } from '../parts/to-ground.ts';
import type { Circuit } from '../template.ts';

/** Several open contacts side by side on one terminal: each has a leg that can break unseen. */
export const openContactsInParallel: Circuit = {
  name: 'open-contacts-in-parallel',
  kinds: ['contact to ground'],
  fits: ({ joined }) => joined === 'parallel',
  template: (given) =>
    toGround(
      { device: 'contact', contact: 'normally open', joined: 'parallel', contacts: inParallel },
      given,
    ),
};
