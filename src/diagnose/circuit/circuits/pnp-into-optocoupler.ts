import { three } from '../parts/cable.ts';
import { intoFed } from '../parts/into-coupler.ts';
import { pnp } from '../parts/sensors.ts';
import { threeWire } from '../parts/usual-values.ts';
import type { Circuit } from '../template.ts';

/** A PNP sensor feeds the light of an input whose common stands on 0 V: the usual pair. */
export const pnpIntoOptocoupler: Circuit = {
  name: 'pnp-into-optocoupler',
  kinds: ['pnp into optocoupler', 'optocoupler fed from supply'],
  fits: ({ sensor }) => sensor === 'pnp',
  template: (_given, family) =>
    intoFed(
      {
        device: 'pnp',
        contact: 'normally closed',
        joined: 'single',
        values: threeWire,
        network: (v) => [...three(v, 'field +', 'field 0 V'), ...pnp(v)],
        link: { controller: ['terminal', 'field +'], switch: ['switch signal', 'switch supply'] },
      },
      family,
    ),
};
