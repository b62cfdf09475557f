import { type CoreSize, coreSizes, loopOhms } from '../diagnose/circuit/conductor.ts';
import type { Given } from '../diagnose/circuit/values.ts';
import { circuitValues } from '../model/machine-file/circuit-kinds.ts';
import { allowedQuantity, inBaseUnit, measures } from '../model/machine-file/quantity.ts';
import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { listed } from '../words/figures.ts';

type CircuitValue = keyof typeof circuitValues;
const names = Object.keys(circuitValues) as CircuitValue[];

/** "pull-up=2.2kohm,supply=5V,contact=normally closed". Throws ToolError `wrong-usage`. */
export function valuesIn(text: string, whole: string): Given & { readonly contact?: string } {
  const given: Partial<Record<CircuitValue, number>> & { contact?: string } = {};
  for (const part of text.split(',').filter((each) => each.trim() !== '')) {
    const [key = '', value = ''] = part.split('=', 2).map((each) => each.trim());
    if (key === 'contact') given.contact = value;
    else given[nameOf(key, whole)] = quantityIn(nameOf(key, whole), value);
  }
  return given;
}

function nameOf(key: string, whole: string): CircuitValue {
  const found = names.find((each) => each === key || each.replaceAll(' ', '-') === key);
  if (found) return found;
  throw new ToolError(
    'wrong-usage',
    `${visible(whole)}: there is no value ${visible(key)}.`,
    `There are contact, ${listed(names)}.`,
  );
}

function quantityIn(name: CircuitValue, text: string): number {
  const measure = measures[circuitValues[name]];
  const value = inBaseUnit(measure, text, 1);
  if (value !== undefined && value > 0) return value;
  throw new ToolError(
    'wrong-usage',
    `The ${name} ${visible(text)} is not understood.`,
    `Write ${allowedQuantity(measure)}, above zero.`,
  );
}

/** A cable told by its core and its length, there and back. */
export function cableGiven(core: string | undefined, length: string | undefined): Given {
  if (core === undefined && length === undefined) return {};
  const size = coreIn(core ?? '');
  const metres = /^(\d{1,4}(?:\.\d{1,3})?) ?m$/.exec(length?.trim() ?? '')?.[1];
  const ohms = size && metres !== undefined ? loopOhms(size, Number(metres)) : undefined;
  if (ohms) return { cable: ohms };
  throw new ToolError(
    'wrong-usage',
    `The cable ${visible(core ?? '(no core)')}, ${visible(length ?? '(no length)')} is not understood.`,
    `Give both: --core of ${listed(coreSizes.map((each) => `${each}mm2`))} or 10awg to 36awg, and --length such as 10m.`,
  );
}

function coreIn(text: string): CoreSize | undefined {
  const [, figure, unit] = /^(\d{1,2}(?:\.\d{1,2})?) ?(mm2|awg)$/i.exec(text.trim()) ?? [];
  if (figure === undefined || unit === undefined) return undefined;
  const size = Number(figure);
  if (unit.toLowerCase() === 'mm2') return { in: 'mm2', size };
  return Number.isInteger(size) && size >= 10 && size <= 36 ? { in: 'awg', size } : undefined;
}
