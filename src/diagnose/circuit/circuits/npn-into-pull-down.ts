import { three } from '../parts/cable.ts';
import { npn } from '../parts/sensors.ts';
import { toSupply } from '../parts/to-supply.ts';
import { threeWire } from '../parts/usual-values.ts';
import type { Circuit } from '../template.ts';

/** The wrong pair: an NPN sensor joins to 0 V what is pulled to 0 V already. */
export const npnIntoPullDown: Circuit = {
  name: 'npn-into-pull-down',
  kinds: ['contact to supply', 'pnp into divider'],
  fits: ({ sensor }) => sensor === 'npn',
  template: (given) =>
    toSupply(
      {
        device: 'npn',
        contact: 'normally closed',
        joined: 'single',
        values: threeWire,
        network: (v) => [...three(v, 'field +', 'field 0 V'), ...npn(v)],
        link: { controller: ['terminal', 'field +'], switch: ['switch signal', 'switch supply'] },
      },
      given,
      24,
    ),
};
