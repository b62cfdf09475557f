import { pair } from '../parts/cable.ts';
import { supervised } from '../parts/contacts.ts';
import { clampVolts, pullUp } from '../parts/pins.ts';
import { logicRails } from '../parts/rails.ts';
import { dryContact, logicFilter, logicSupply } from '../parts/usual-values.ts';
import { logicLimits } from '../pin-limits.ts';
import type { Circuit } from '../template.ts';
import { type Numbers, within } from '../values.ts';

const supply = (v: Numbers): number => v('supply');

/** A board that knows its resistors sets its comparators half way between the four states they make. */
function bands(v: Numbers): readonly [number, number, number] {
  const at = (ohms: number) => (supply(v) * ohms) / (v('pull-up') + ohms);
  const [rest, pressed] = [at(v('contact resistor')), at(v('contact resistor') + v('end resistor'))];
  return [rest / 2, (rest + pressed) / 2, (pressed + supply(v)) / 2];
}

/** One resistor before the contact, one across it: shorted, at rest, pressed and cut are four voltages. Needs an analogue input. */
export const supervisedContact: Circuit = {
  name: 'supervised-contact',
  kinds: ['supervised contact'],
  fits: () => true,
  template: () => ({
    joins: '0 V',
    device: 'contact',
    stage: 'window',
    joined: 'single',
    contact: 'normally closed',
    values: {
      supply: logicSupply(5),
      'pull-up': within(2200, 1),
      'contact resistor': within(1000, 1),
      'end resistor': within(2200, 1),
      ...logicFilter,
      ...dryContact,
    },
    families: ['window', 'cmos 5 V'],
    rails: logicRails(supply),
    channel: (v) => [...pullUp(v, 'logic +'), ...pair(v, 'field 0 V'), ...supervised(v)],
    limits: (v, family) => {
      const ceiling = supply(v) + clampVolts;
      return family === 'window'
        ? { kind: 'window', limits: bands(v), ceiling }
        : { kind: 'threshold', ...logicLimits(family, supply(v)), lowMeans: 'conducting', ceiling };
    },
    link: { controller: ['terminal', '0 V'], switch: ['switch signal', 'switch common'] },
    plus: 'logic +',
  }),
};
