import { pair } from '../parts/cable.ts';
import { intoFed } from '../parts/into-coupler.ts';
import { twoWire } from '../parts/sensors.ts';
import { twoWireSensor } from '../parts/usual-values.ts';
import type { Circuit } from '../template.ts';

/** A two-wire sensor in the place of a contact: it drops volts when on and leaks when off. */
export const twoWireIntoOptocoupler: Circuit = {
  name: 'two-wire-into-optocoupler',
  kinds: ['two-wire into optocoupler', 'optocoupler fed from supply', 'optocoupler drawn to ground'],
  fits: ({ sensor }) => sensor === 'two-wire',
  template: (_given, family = 'IEC 61131-2 type 3') => ({
    ...intoFed(
      {
        device: 'two-wire',
        contact: 'normally closed',
        joined: 'single',
        values: twoWireSensor,
        network: (v) => [...pair(v, 'field +'), ...twoWire(v, 'device common', 'device signal')],
        link: { controller: ['terminal', 'field +'], switch: ['switch signal', 'switch common'] },
      },
      family,
    ),
    // Its leakage may hold a plain input on; types 2 and 3 of IEC 61131-2 were made for it.
    families: ['IEC 61131-2 type 3', 'IEC 61131-2 type 2', 'IEC 61131-2 type 1', 'optocoupler loop'],
  }),
};
