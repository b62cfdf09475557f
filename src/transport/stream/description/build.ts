import type { z } from 'zod';
import type { Path, Wrong } from '../../../model/machine-file/problem.ts';
import type { Tree } from '../../../model/machine-file/tree.ts';
import {
  type ActivityBinding,
  type AxisBinding,
  absent,
  type InputBinding,
  type LinesMeant,
  type Part,
  present,
} from '../../../model/stream-description.ts';
import type { activityShape, axisShape, inputShape, SpotFields } from './shape.ts';

type Say = (wrong: Wrong) => void;
const parts = ['bit', 'character', 'word', 'letter'] as const;

/** Builds what a description binds from an entry's fields; says what is wrong with it and gives nothing where it cannot be bound. */
type Builder<Shape extends z.ZodObject, Binding> = (
  fields: z.output<Shape> | undefined,
  tree: Tree,
  path: Path,
  say: Say,
) => Binding | undefined;

export const inputOf: Builder<typeof inputShape, InputBinding> = (fields, tree, path, say) => {
  const part = fields && partIn(fields, tree, path, say);
  if (!part) return undefined;
  const usual = usualWords(part);
  const active = fields.active ?? usual?.on;
  const inactive = fields.inactive ?? usual?.off;
  if (!active || !inactive || active.some((each) => inactive.includes(each))) {
    const allowed = 'lists active and inactive that share nothing';
    say({
      path,
      offset: tree.at,
      found: 'no telling the two states apart',
      allowed,
      tryNext: 'write both lists',
    });
    return undefined;
  }
  return { ...spotOf(fields, part), shows: fields.shows ?? 'level', active, inactive };
};

export const activityOf: Builder<typeof activityShape, ActivityBinding> = (fields, tree, path, say) => {
  const part = fields && partIn(fields, tree, path, say);
  if (!part) return undefined;
  const { still = [], moving = [], homing = [], fault = [] } = fields;
  return { ...spotOf(fields, part), still, moving, homing, fault };
};

export const axisOf = ({ field, lines, scale = 1 }: z.output<typeof axisShape>): AxisBinding => ({
  field,
  lines: linesOf(lines),
  scale,
});

const spotOf = ({ field, lines }: SpotFields, part: Part) => ({ field, lines: linesOf(lines), part });

const linesOf = (lines: SpotFields['lines']): LinesMeant => lines ?? {};

/** What stands at a part when it is so and when not, where that goes without saying. */
const usualWords = (part: Part) =>
  part.kind === 'bit'
    ? { on: ['1'], off: ['0'] }
    : part.kind === 'word' || part.kind === 'letter'
      ? { on: [present], off: [absent] }
      : undefined;

function partIn(fields: SpotFields, tree: Tree, path: Path, say: Say): Part | undefined {
  const { bit, base, character, length, word, letter } = fields;
  const named = parts.filter((each) => fields[each] !== undefined);
  const refuse = (found: string, allowed: string, tryNext: string) => {
    say({ path, offset: tree.at, found, allowed, tryNext });
    return undefined;
  };
  if (named.length > 1) return refuse(named.join(' and '), `one of ${parts.join(', ')}`, 'take one out');
  if (bit !== undefined) {
    if (base === '2' || base === '10' || base === '16')
      return { kind: 'bit', bit, base: base === '2' ? 2 : base === '10' ? 10 : 16 };
    return refuse('a bit without its base', 'base: 2, 10 or 16', 'add base');
  }
  if (character !== undefined) {
    if (length !== undefined && character < length) return { kind: 'character', index: character, length };
    return refuse('a character without the length', 'length, more than character', 'add length');
  }
  if (word !== undefined) return { kind: 'word', word };
  if (letter !== undefined) return { kind: 'letter', letter };
  return { kind: 'whole' };
}
