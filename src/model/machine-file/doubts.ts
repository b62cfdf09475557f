import type { Part, Parts } from './parts.ts';
import type { Wrong } from './problem.ts';
import { axisLetters, type SwitchFields } from './shape.ts';

type Say = (doubt: Wrong) => void;

/** What is right as it stands, but cannot be what its owner wants: said beside a file that is used all the same. */
export function sayDoubts(parts: Parts, say: Say): void {
  for (const input of parts.inputs) {
    if (input.kind === 'single') sayHomeWithoutAxis(input, input.fields ?? {}, parts, say);
    else
      for (const each of input.switches)
        sayHomeWithoutAxis(each, { ...input.fields, ...each.fields }, parts, say);
  }
}

/** A home switch belongs to an axis; without it no seek, no homing and no place of the switch can be looked at. */
function sayHomeWithoutAxis(
  { name, path, at }: Part<unknown>,
  fields: Pick<SwitchFields, 'duty' | 'axis'>,
  { axes }: Parts,
  say: Say,
): void {
  if (!fields.duty?.includes('home') || fields.axis !== undefined) return;
  const named = axes.map((axis) => axis.name);
  const letter = axisLetters.find((each) => new RegExp(`(^|-)${each}\\d*(-|$)`, 'i').test(name));
  say({
    path: [...path, 'axis'],
    offset: at,
    found: 'duty home, but no axis: no seek and no homing can be watched with it',
    allowed: axisLetters.join(', '),
    tryNext:
      letter !== undefined && named.includes(letter)
        ? `add \`axis: ${letter}\`, if it is the home switch of ${letter}`
        : `add the axis that homes to it, such as \`axis: ${named[0] ?? 'X'}\``,
  });
}
