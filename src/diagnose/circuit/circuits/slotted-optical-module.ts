import { pulledSensor } from '../parts/pulled-sensor.ts';
import { slot } from '../parts/sensors.ts';
import { logicSupply, tenKilohm, threeWire } from '../parts/usual-values.ts';
import type { Circuit } from '../template.ts';
import { between } from '../values.ts';

/** A bare slotted pair: conducts while the slot is free, opens when a flag blocks it or its light dies. */
export const slottedOpticalModule: Circuit = {
  name: 'slotted-optical-module',
  kinds: ['slotted optical module', 'contact to ground'],
  fits: ({ sensor }) => sensor === 'optical',
  template: (given) =>
    pulledSensor(
      {
        device: 'optical',
        contact: 'normally closed',
        values: { supply: logicSupply(5), ...threeWire, drop: between(0.1, 0.2, 0.4), load: tenKilohm },
        output: slot,
      },
      given,
    ),
};
