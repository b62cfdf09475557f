import { z } from 'zod';
import { nearest } from '../nearest.ts';
import { type AllowedWords, allowedWords } from './fields.ts';
import { isSideForEnd, meantQuantity, meantWord } from './meant.ts';
import { foundText } from './plain.ts';
import { cutShort, type Path, quoted, type Wrong } from './problem.ts';
import { entryOf, type Tree } from './tree.ts';

/** Says what is wrong with the values of one object of the file, everything at once; the values themselves where nothing is. */
export function fieldsOf<Shape extends z.ZodObject>(
  shape: Shape,
  tree: Tree,
  plain: unknown,
  path: Path,
  say: (wrong: Wrong) => void,
): z.output<Shape> | undefined {
  const read = shape.safeParse(plain ?? {});
  if (read.success) return read.data;
  for (const issue of read.error.issues) {
    // Keys nobody knows are found in the tree, where each has its own place.
    if (issue.code === 'unrecognized_keys') continue;
    const below = issue.path.map((part) => (typeof part === 'number' ? part : String(part)));
    say({ path: [...path, ...below], ...wordsFor(shape, tree, below) });
  }
  return undefined;
}

function wordsFor(shape: z.ZodType, tree: Tree, path: Path): Omit<Wrong, 'path'> {
  const stands = treeAt(tree, path);
  const rule = allowedAt(shape, path);
  const allowed = rule?.allowed ?? 'a value of this field';
  if (stands === undefined || stands.kind === 'nothing')
    return { found: 'nothing', allowed, tryNext: `add \`${String(path.at(-1))}\`` };
  const text = foundText(stands);
  const found = stands.kind === 'text' ? quoted(text) : cutShort(text);
  if (stands.kind === 'text' && rule?.allowed.startsWith('a list'))
    return { found, allowed, tryNext: `put it in brackets: [${cutShort(text)}]` };
  if (rule?.allowed.startsWith('a list'))
    return { found, allowed, tryNext: 'write what it is for, as in [home, limit]' };
  const meant = stands.kind === 'text' ? meantValue(text, rule) : undefined;
  if (meant !== undefined) return { found, allowed, tryNext: meant };
  if (stands.kind === 'text' && /^\s*[-+]?\d+,\d/.test(text))
    return { found, allowed, tryNext: 'write the decimal sign as a point' };
  if (rule?.unit && stands.kind === 'text' && /^\s*[-+]?\d+(\.\d+)?\s*$/.test(text))
    return { found, allowed, tryNext: `add the unit, as in ${text.trim()} ${rule.unit}` };
  return {
    found,
    allowed,
    tryNext: 'write one of what is allowed, or leave the entry out if it is not known',
  };
}

/** What to write in place of a value that is nearly right, or is right elsewhere. */
function meantValue(text: string, rule: AllowedWords | undefined): string | undefined {
  const { oneOf = [], units = [] } = rule ?? {};
  if (isSideForEnd(text, oneOf))
    return `write ${listedOr(oneOf)}, as the axis counts; ${text.trim()} is a side, as \`side\` of a switch or \`positive\` of an axis says it`;
  const word = meantWord(text);
  const near = oneOf.find((each) => each === word) ?? nearest(text, oneOf) ?? meantQuantity(text, units);
  return near === undefined ? undefined : `write ${near}`;
}

const listedOr = (all: readonly string[]): string => all.join(' or ');

function treeAt(tree: Tree, path: Path): Tree | undefined {
  let here: Tree | undefined = tree;
  for (const part of path)
    here = here?.kind === 'list' ? here.items[Number(part)] : entryOf(here, String(part))?.value;
  return here;
}

/** The words kept beside the innermost schema a path leads to. */
function allowedAt(schema: z.ZodType, path: Path): AllowedWords | undefined {
  let here: z.core.$ZodType | undefined = schema;
  let words: AllowedWords | undefined;
  for (const part of [undefined, ...path]) {
    if (part !== undefined) here = inside(here, part);
    while (here instanceof z.ZodOptional) here = here.unwrap();
    words = (here && allowedWords.get(here as z.ZodType)) ?? words;
  }
  return words;
}

function inside(schema: z.core.$ZodType | undefined, part: string | number): z.core.$ZodType | undefined {
  if (schema instanceof z.ZodObject)
    return Object.hasOwn(schema.shape, part) ? (schema.shape[part] as z.core.$ZodType) : undefined;
  if (schema instanceof z.ZodArray) return schema.element;
  if (schema instanceof z.ZodTuple) return schema._zod.def.items[Number(part)];
  return undefined;
}
