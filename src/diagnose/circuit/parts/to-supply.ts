import type { Network } from '../network.ts';
import type { Template } from '../template.ts';
import { type Given, givenNumber, type Numbers, type Values } from '../values.ts';
import { divider, pinLimits, pullDown } from './pins.ts';
import { fieldRails } from './rails.ts';
import { logicFamilies } from './to-ground.ts';
import { divided, fieldSupply, isField, logicSupply, pulledDown } from './usual-values.ts';

const logic = (v: Numbers): number => v('logic supply');

/** A terminal that something joins to +: pulled down at logic level, divided where the supply is above it. */
export function toSupply(
  far: Pick<Template, 'device' | 'contact' | 'joined' | 'link'> & {
    readonly values: Values;
    readonly network: (v: Numbers) => Network;
  },
  given: Given,
  usualSupply: number,
): Template {
  const { network, values, ...rest } = far;
  const field = isField(given, usualSupply);
  const logicVolts =
    givenNumber(given, 'logic supply') ?? (field ? 3.3 : (givenNumber(given, 'supply') ?? usualSupply));
  const board = { ...(field ? divided : pulledDown), 'logic supply': logicSupply(logicVolts) };
  return {
    ...rest,
    joins: '+',
    stage: field ? 'divider' : 'pull-down',
    values: { supply: field ? fieldSupply : logicSupply(5), ...board, ...values },
    families: logicFamilies(logicVolts),
    rails: fieldRails,
    channel: (v) => [...(field ? divider(v) : pullDown(v)), ...network(v)],
    limits: pinLimits(logic, 'open'),
    plus: 'field +',
  };
}
