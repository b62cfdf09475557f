import { three } from '../parts/cable.ts';
import { intoDrawn } from '../parts/into-coupler.ts';
import { npn } from '../parts/sensors.ts';
import { threeWire } from '../parts/usual-values.ts';
import type { Circuit } from '../template.ts';

/** An NPN sensor draws current through the light of an input that hangs on the field's +. */
export const npnIntoOptocoupler: Circuit = {
  name: 'npn-into-optocoupler',
  kinds: ['npn into optocoupler', 'optocoupler drawn to ground'],
  fits: ({ sensor }) => sensor === 'npn',
  template: (_given, family) =>
    intoDrawn(
      {
        device: 'npn',
        contact: 'normally closed',
        joined: 'single',
        values: threeWire,
        network: (v) => [...three(v, 'field +', 'field 0 V'), ...npn(v)],
      },
      family,
    ),
};
