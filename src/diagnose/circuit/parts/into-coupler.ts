import type { InputFamily } from '../../../model/wiring-names.ts';
import type { Network } from '../network.ts';
import type { Template } from '../template.ts';
import type { Numbers, Values } from '../values.ts';
import { drawnCoupler, fedCoupler } from './couplers.ts';
import { pinLimits } from './pins.ts';
import { fieldRails } from './rails.ts';
import { couplerInput, fieldSupply } from './usual-values.ts';

const logic = (v: Numbers): number => v('logic supply');

const families = [
  'optocoupler loop',
  'IEC 61131-2 type 1',
  'IEC 61131-2 type 2',
  'IEC 61131-2 type 3',
] as const satisfies readonly InputFamily[];

type Far = Pick<Template, 'device' | 'contact' | 'joined'> & {
  readonly values: Values;
  readonly network: (v: Numbers) => Network;
};

/** Whatever joins the terminal to + feeds the light; its other end stands on 0 V. */
export const intoFed = (far: Far & Pick<Template, 'link'>, family: InputFamily | undefined): Template =>
  into(far, '+', far.link, family);

/** Whatever joins the terminal to 0 V draws current through the light from +. */
export const intoDrawn = (far: Far, family: InputFamily | undefined): Template =>
  into(
    far,
    '0 V',
    { controller: ['terminal', 'field 0 V'], switch: ['switch signal', 'switch common'] },
    family,
  );

function into(
  { network, values, device, contact, joined }: Far,
  joins: '0 V' | '+',
  link: Template['link'],
  family: InputFamily | undefined,
): Template {
  const coupler = joins === '+' ? fedCoupler : drawnCoupler;
  return {
    device,
    contact,
    joined,
    joins,
    stage: joins === '+' ? 'fed optocoupler' : 'drawn optocoupler',
    values: { supply: fieldSupply, ...couplerInput(family), ...values },
    families,
    rails: fieldRails,
    channel: (v, read) => [...coupler(v, read), ...network(v)],
    limits: pinLimits(logic, 'conducting'),
    link,
    plus: 'field +',
  };
}
