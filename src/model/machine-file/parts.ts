import { circuitValues } from './circuit-kinds.ts';
import { sayUnknownKeys } from './known-keys.ts';
import { plainOf } from './plain.ts';
import type { Path, Wrong } from './problem.ts';
import {
  type AxisFields,
  axisLetters,
  axisShape,
  joinedShape,
  type SharedFields,
  type SingleFields,
  type SwitchFields,
  singleShape,
  switchShape,
  type TopFields,
  topShape,
} from './shape.ts';
import { fieldsOf } from './shape-problems.ts';
import { type Entry, entryOf, type Tree } from './tree.ts';

type Say = (wrong: Wrong) => void;

/** The file taken apart by its own structure; a part whose values are wrong has said so and is undefined. */
export interface Parts {
  readonly top: TopFields | undefined;
  readonly inputs: readonly InputPart[];
  readonly axes: readonly AxisPart[];
}
export interface Part<Fields> {
  readonly name: string;
  readonly path: Path;
  readonly at: number;
  readonly tree: Tree;
  readonly fields: Fields | undefined;
}
export type AxisPart = Part<AxisFields>;
export type InputPart =
  | (Part<SingleFields> & { readonly kind: 'single' })
  | (Part<SharedFields> & { readonly kind: 'joined'; readonly switches: readonly Part<SwitchFields>[] });

const topKeys = [...Object.keys(topShape.shape), 'inputs', 'axes'];
const singleKeys = Object.keys(singleShape.shape);
const joinedKeys = [...Object.keys(joinedShape.shape), 'switches'];
const switchKeys = Object.keys(switchShape.shape);
const circuitKeys = ['kind', ...Object.keys(circuitValues)];
const axisKeys = Object.keys(axisShape.shape);

export function partsOf(tree: Tree, say: Say): Parts {
  if (tree.kind !== 'map') {
    say({
      path: [],
      found: tree.kind === 'nothing' ? 'an empty file' : 'no named entries',
      allowed: `entries: ${topKeys.join(', ')}`,
      tryNext: 'begin with a starter file',
    });
    return { top: undefined, inputs: [], axes: [] };
  }
  sayUnknownKeys(
    tree,
    [],
    topKeys,
    { 'one of the `inputs`': singleKeys, 'one of the `axes`': axisKeys },
    say,
  );
  const { inputs: _, axes: __, ...plain } = (plainOf(tree) ?? {}) as Record<string, unknown>;
  const top = fieldsOf(topShape, tree, plain, [], say);
  const inputs = named(tree, 'inputs', 'inputs by name, as in `x-home:`', say).map((entry) =>
    inputPart(entry, say),
  );
  if (entryOf(tree, 'axes') === undefined)
    say({
      path: ['axes'],
      found: 'nothing',
      allowed: `axes by letter: ${axisLetters.join(', ')}`,
      tryNext: 'add `axes`',
    });
  const axes = named(tree, 'axes', `axes by letter: ${axisLetters.join(', ')}`, say).map((entry) => {
    const path = ['axes', entry.key];
    sayUnknownKeys(entry.value, path, axisKeys, { 'one of the `inputs`': singleKeys }, say);
    return part(axisShape, entry, path, say);
  });
  return { top, inputs, axes };
}

function inputPart(entry: Entry, say: Say): InputPart {
  const path = ['inputs', entry.key];
  const joined = entryOf(entry.value, 'joined') ?? entryOf(entry.value, 'switches');
  if (joined === undefined) {
    sayUnknownKeys(entry.value, path, singleKeys, { 'its `circuit`': circuitKeys }, say);
    return { kind: 'single', ...part(singleShape, entry, path, say) };
  }
  sayUnknownKeys(entry.value, path, joinedKeys, { 'each of the `switches`': switchKeys }, say);
  const switches = named(entry.value, 'switches', 'switches by name, as in `y-min:`', say, path).map(
    (each) => {
      const below = [...path, 'switches', each.key];
      sayUnknownKeys(each.value, below, switchKeys, { 'the input itself': joinedKeys }, say);
      return part(switchShape, each, below, say);
    },
  );
  return { kind: 'joined', ...part(joinedShape, entry, path, say, 'switches'), switches };
}

function part<Shape extends Parameters<typeof fieldsOf>[0]>(
  shape: Shape,
  entry: Entry,
  path: Path,
  say: Say,
  apart?: string,
) {
  const { key: name, keyAt: at, value: tree } = entry;
  if (tree.kind === 'text' || tree.kind === 'list')
    say({
      path,
      found: 'no entries',
      allowed: 'entries, as in `key: value`',
      tryNext: 'write the entries below it',
    });
  const circuit = entryOf(tree, 'circuit');
  if (circuit) sayUnknownKeys(circuit.value, [...path, 'circuit'], circuitKeys, {}, say);
  const plain = { ...((tree.kind === 'map' ? plainOf(tree) : {}) as Record<string, unknown>) };
  if (apart !== undefined) delete plain[apart];
  return { name, path, at, tree, fields: fieldsOf<Shape>(shape, tree, plain, path, say) };
}

/** The named entries under a key; a value that has no entries is said to be wrong. */
function named(tree: Tree, key: string, allowed: string, say: Say, path: Path = []): readonly Entry[] {
  const entry = entryOf(tree, key);
  if (entry === undefined || entry.value.kind === 'map')
    return entry?.value.kind === 'map' ? entry.value.entries : [];
  if (entry.value.kind !== 'nothing' || key !== 'inputs')
    say({
      path: [...path, key],
      found: entry.value.kind === 'nothing' ? 'nothing' : 'no named entries',
      allowed,
      tryNext: `write names below \`${key}:\``,
    });
  return [];
}
