import type { Network } from '../network.ts';
import type { Template } from '../template.ts';
import { type Given, givenNumber, type Numbers, type Values } from '../values.ts';
import { pair } from './cable.ts';
import { pinLimits, pullUp } from './pins.ts';
import { logicRails } from './rails.ts';
import { dryContact, logicFilter, logicSupply, tenKilohm } from './usual-values.ts';

/** Families a plain logic pin may have; the first is the usual one at 5 V. */
const logicFamilies5 = ['cmos 5 V', 'schmitt', 'ttl'] as const;
const logicFamilies33 = ['cmos 3.3 V', 'lvttl', 'schmitt'] as const;
/** From this supply down a pin is of the 3.3 V families, V. */
const highest33 = 3.8;

export const logicFamilies = (supply: number): Template['families'] =>
  supply <= highest33 ? logicFamilies33 : logicFamilies5;

const supply = (v: Numbers): number => v('supply');

const contactValues: Values = {
  supply: logicSupply(5),
  'pull-up': tenKilohm,
  ...logicFilter,
  ...dryContact,
};

/** Contacts of whatever kind that join a pulled-up terminal to 0 V: everything but what stands at the far end is the same. */
export function toGround(
  far: Pick<Template, 'device' | 'contact' | 'joined'> & { readonly contacts: (v: Numbers) => Network },
  given: Given,
): Template {
  const { contacts, ...rest } = far;
  return {
    ...rest,
    joins: '0 V',
    stage: 'pull-up',
    values: contactValues,
    families: logicFamilies(givenNumber(given, 'supply') ?? 5),
    rails: logicRails(supply),
    channel: (v) => [...pullUp(v, 'logic +'), ...pair(v, 'field 0 V'), ...contacts(v)],
    limits: pinLimits(supply, 'conducting'),
    link: { controller: ['terminal', '0 V'], switch: ['switch signal', 'switch common'] },
    plus: 'logic +',
  };
}
