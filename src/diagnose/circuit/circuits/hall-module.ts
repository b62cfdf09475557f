import { pulledSensor } from '../parts/pulled-sensor.ts';
import { npn } from '../parts/sensors.ts';
import { logicSupply, tenKilohm, threeWire } from '../parts/usual-values.ts';
import type { Circuit } from '../template.ts';
import { between } from '../values.ts';

/** A Hall switch on a small board: open collector, its own pull-up, 5 V from the controller. */
export const hallModule: Circuit = {
  name: 'hall-module',
  kinds: ['hall module', 'contact to ground'],
  fits: ({ sensor }) => sensor === 'hall',
  template: (given) =>
    pulledSensor(
      {
        device: 'hall',
        contact: 'normally open',
        values: { supply: logicSupply(5), ...threeWire, drop: between(0.1, 0.2, 0.4), load: tenKilohm },
        output: npn,
      },
      given,
    ),
};
