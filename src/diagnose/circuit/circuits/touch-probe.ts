import { inSeries } from '../parts/contacts.ts';
import { toGround } from '../parts/to-ground.ts';
import type { Circuit } from '../template.ts';

/** Three pairs of balls and rods in series: the line opens when the stylus is moved. */
export const touchProbe: Circuit = {
  name: 'touch-probe',
  kinds: ['touch probe', 'contact to ground'],
  fits: ({ duty, contact }) => duty.includes('probe') && contact === 'normally closed',
  template: (given) =>
    toGround(
      { device: 'touch probe', contact: 'normally closed', joined: 'single', contacts: inSeries },
      given,
    ),
};
