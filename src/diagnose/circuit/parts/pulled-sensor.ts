import type { Network } from '../network.ts';
import type { Template } from '../template.ts';
import { type Given, givenNumber, type Numbers, type Values } from '../values.ts';
import { three } from './cable.ts';
import { pinLimits, pullUp } from './pins.ts';
import { fieldRails } from './rails.ts';
import { logicFamilies } from './to-ground.ts';
import { logicFilter, logicSupply, tenKilohm } from './usual-values.ts';

const logic = (v: Numbers): number => v('logic supply');

/** A three-wire sensor or module whose output works on a terminal pulled up to the logic's supply. */
export function pulledSensor(
  far: Pick<Template, 'device' | 'contact'> & {
    readonly values: Values;
    readonly output: (v: Numbers) => Network;
    readonly joins?: Template['joins'];
  },
  given: Given,
): Template {
  return {
    device: far.device,
    contact: far.contact,
    joined: 'single',
    joins: far.joins ?? '0 V',
    stage: 'pull-up',
    values: { 'logic supply': logicSupply(5), 'pull-up': tenKilohm, ...logicFilter, ...far.values },
    families: logicFamilies(givenNumber(given, 'logic supply') ?? 5),
    rails: fieldRails,
    channel: (v) => [...pullUp(v, 'logic +'), ...three(v, 'field +', 'field 0 V'), ...far.output(v)],
    limits: pinLimits(logic, 'conducting'),
    link: { controller: ['terminal', '0 V'], switch: ['switch signal', 'switch common'] },
    plus: 'field +',
  };
}
