import { three } from '../parts/cable.ts';
import { intoDrawn } from '../parts/into-coupler.ts';
import { pnp } from '../parts/sensors.ts';
import { threeWire } from '../parts/usual-values.ts';
import type { Circuit } from '../template.ts';

/** The wrong pair: both ends of the light stand on +. */
export const pnpIntoDrawnOptocoupler: Circuit = {
  name: 'pnp-into-drawn-optocoupler',
  kinds: ['optocoupler drawn to ground', 'npn into optocoupler'],
  fits: ({ sensor }) => sensor === 'pnp',
  template: (_given, family) =>
    intoDrawn(
      {
        device: 'pnp',
        contact: 'normally closed',
        joined: 'single',
        values: threeWire,
        network: (v) => [...three(v, 'field +', 'field 0 V'), ...pnp(v)],
      },
      family,
    ),
};
