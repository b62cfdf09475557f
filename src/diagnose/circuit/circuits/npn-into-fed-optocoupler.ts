import { three } from '../parts/cable.ts';
import { intoFed } from '../parts/into-coupler.ts';
import { npn } from '../parts/sensors.ts';
import { threeWire } from '../parts/usual-values.ts';
import type { Circuit } from '../template.ts';

/** The wrong pair: both ends of the light stand on 0 V. */
export const npnIntoFedOptocoupler: Circuit = {
  name: 'npn-into-fed-optocoupler',
  kinds: ['optocoupler fed from supply', 'pnp into optocoupler'],
  fits: ({ sensor }) => sensor === 'npn',
  template: (_given, family) =>
    intoFed(
      {
        device: 'npn',
        contact: 'normally closed',
        joined: 'single',
        values: threeWire,
        network: (v) => [...three(v, 'field +', 'field 0 V'), ...npn(v)],
        link: { controller: ['terminal', 'field +'], switch: ['switch signal', 'switch supply'] },
      },
      family,
    ),
};
