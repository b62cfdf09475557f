import { pulledSensor } from '../parts/pulled-sensor.ts';
import { npn } from '../parts/sensors.ts';
import { fieldSupply, threeWire } from '../parts/usual-values.ts';
import type { Circuit } from '../template.ts';

/** An NPN sensor on its own supply pulls a logic terminal down; both supplies must share their 0 V. */
export const npnIntoPullUp: Circuit = {
  name: 'npn-into-pull-up',
  kinds: ['npn into pull-up', 'contact to ground'],
  fits: ({ sensor }) => sensor === 'npn',
  template: (given) =>
    pulledSensor(
      {
        device: 'npn',
        contact: 'normally closed',
        values: { supply: fieldSupply, ...threeWire },
        output: npn,
      },
      given,
    ),
};
