import { oneContact } from '../parts/contacts.ts';
import { toGround } from '../parts/to-ground.ts';
import type { Circuit } from '../template.ts';

/** A plate under the tool and a clip on the tool: they close the line when they touch, if the clip is on. */
export const touchPlate: Circuit = {
  name: 'touch-plate',
  kinds: ['touch plate', 'contact to ground'],
  fits: ({ duty, contact }) => duty.includes('probe') && contact !== 'normally closed',
  template: (given) =>
    toGround(
      { device: 'touch plate', contact: 'normally open', joined: 'single', contacts: oneContact },
      given,
    ),
};
