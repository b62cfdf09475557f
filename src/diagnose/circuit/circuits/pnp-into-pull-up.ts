import { pulledSensor } from '../parts/pulled-sensor.ts';
import { pnp } from '../parts/sensors.ts';
import { fieldSupply, threeWire } from '../parts/usual-values.ts';
import type { Circuit } from '../template.ts';

/** The wrong pair: a PNP sensor puts its supply on a pin that waits to be pulled down. */
export const pnpIntoPullUp: Circuit = {
  name: 'pnp-into-pull-up',
  kinds: ['contact to ground'],
  fits: ({ sensor }) => sensor === 'pnp',
  template: (given) =>
    pulledSensor(
      {
        device: 'pnp',
        contact: 'normally closed',
        values: { supply: fieldSupply, ...threeWire },
        output: pnp,
      },
      given,
    ),
};
