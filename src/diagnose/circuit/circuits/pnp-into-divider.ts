import { three } from '../parts/cable.ts';
import { pnp } from '../parts/sensors.ts';
import { toSupply } from '../parts/to-supply.ts';
import { threeWire } from '../parts/usual-values.ts';
import type { Circuit } from '../template.ts';

/** A PNP sensor into a divider that brings the field's voltage down to the pin. */
export const pnpIntoDivider: Circuit = {
  name: 'pnp-into-divider',
  kinds: ['pnp into divider', 'contact to supply'],
  fits: ({ sensor }) => sensor === 'pnp',
  template: (given) =>
    toSupply(
      {
        device: 'pnp',
        contact: 'normally closed',
        joined: 'single',
        values: threeWire,
        network: (v) => [...three(v, 'field +', 'field 0 V'), ...pnp(v)],
        link: { controller: ['terminal', 'field +'], switch: ['switch signal', 'switch supply'] },
      },
      given,
      24,
    ),
};
