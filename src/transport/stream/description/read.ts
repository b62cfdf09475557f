import type { z } from 'zod';
import { sayUnknownKeys } from '../../../model/machine-file/known-keys.ts';
import { type FileProblem, type Path, pathText, type Wrong } from '../../../model/machine-file/problem.ts';
import { axisLetters } from '../../../model/machine-file/shape.ts';
import { fieldsOf } from '../../../model/machine-file/shape-problems.ts';
import { syntaxOf } from '../../../model/machine-file/syntax.ts';
import { type Entry, entryOf, offsetOf, type Tree } from '../../../model/machine-file/tree.ts';
import type { StreamDescription } from '../../../model/stream-description.ts';
import { activityOf, axisOf, inputOf } from './build.ts';
import { activityShape, axisShape, inputShape, requestShape, topShape } from './shape.ts';

export type ReadDescription =
  | { readonly description: StreamDescription; readonly problems?: never }
  | { readonly problems: readonly [FileProblem, ...FileProblem[]]; readonly description?: never };

type Say = (wrong: Wrong) => void;
const parts = ['request', 'inputs', 'axes', 'activity'];
const mostInputs = 64;

/** Reads a stream description (YAML 1.2). Never throws: the description, or everything wrong with the file in the order of its lines. */
export function readDescription(text: string): ReadDescription {
  const wrongs: Wrong[] = [];
  const say: Say = (wrong) => wrongs.push(wrong);
  const { tree, lines } = syntaxOf(text, say);
  const description = wrongs.length === 0 ? descriptionIn(tree, say) : undefined;
  const problems = wrongs
    .map((wrong) => ({ wrong, at: wrong.offset ?? offsetOf(tree, wrong.path) }))
    .sort((a, b) => a.at - b.at)
    .map(({ wrong: { path, found, allowed, tryNext }, at }) => {
      const { line, col } = lines.linePos(at);
      const where = { line: Math.max(1, line), column: Math.max(1, col), path: pathText(path) };
      return { ...where, found, allowed, tryNext };
    });
  const [first, ...more] = problems;
  if (first) return { problems: [first, ...more] };
  if (description) return { description };
  throw new Error('a description that is wrong says why');
}

function descriptionIn(tree: Tree, say: Say): StreamDescription | undefined {
  if (tree.kind !== 'map') {
    say({
      path: [],
      found: 'no named entries',
      allowed: `entries: stream, agree, ${parts.join(', ')}`,
      tryNext: 'let tellwire learn write one',
    });
    return undefined;
  }
  sayUnknownKeys(tree, [], [...Object.keys(topShape.shape), ...parts], {}, say);
  const {
    request: _,
    inputs: __,
    axes: ___,
    activity: ____,
    ...own
  } = textsOf(tree) as Record<string, unknown>;
  const top = fieldsOf(topShape, tree, own, [], say);
  const inputs = entriesOf(tree, 'inputs', say).flatMap(({ key, keyAt, value }) => {
    const path = ['inputs', key];
    if (!/^[a-z0-9-]{1,24}$/.test(key))
      say({
        path,
        offset: keyAt,
        found: key.slice(0, 60),
        allowed: 'names as in the machine file',
        tryNext: 'rename it',
      });
    const at = inputOf(read(inputShape, value, path, say), value, path, say);
    return at ? [{ name: key, at }] : [];
  });
  if (inputs.length > mostInputs)
    say({
      path: ['inputs'],
      found: `${inputs.length} inputs`,
      allowed: `${mostInputs} at most`,
      tryNext: 'take some out',
    });
  const axes = entriesOf(tree, 'axes', say).flatMap(({ key, keyAt, value }) => {
    const path = ['axes', key];
    const letter = axisLetters.find((each) => each === key);
    const fields = read(axisShape, value, path, say);
    if (letter && fields) return [{ letter, at: axisOf(fields) }];
    if (!letter)
      say({
        path,
        offset: keyAt,
        found: key.slice(0, 60),
        allowed: axisLetters.join(', '),
        tryNext: 'write a letter of ISO 841',
      });
    return [];
  });
  const doing = entryOf(tree, 'activity');
  const activity =
    doing && activityOf(read(activityShape, doing.value, ['activity'], say), doing.value, ['activity'], say);
  const asked = entryOf(tree, 'request');
  const request = asked && read(requestShape, asked.value, ['request'], say);
  if (!top) return undefined;
  return { stream: top.stream, agree: top.agree === '2' ? 2 : 1, request, inputs, axes, activity };
}

function entriesOf(tree: Tree, name: string, say: Say): readonly Entry[] {
  const value = entryOf(tree, name)?.value;
  if (value === undefined || value.kind === 'nothing') return [];
  if (value.kind === 'map') return value.entries;
  say({
    path: [name],
    found: 'no named entries',
    allowed: 'entries by name',
    tryNext: 'compare with a file that learn wrote',
  });
  return [];
}

function read<Shape extends z.ZodObject>(shape: Shape, tree: Tree, path: Path, say: Say) {
  sayUnknownKeys(tree, path, Object.keys(shape.shape), {}, say);
  return fieldsOf(shape, tree, textsOf(tree), path, say);
}

/** Values as they are written, for zod; objects without a prototype. */
function textsOf(tree: Tree): unknown {
  if (tree.kind === 'text') return tree.text;
  if (tree.kind === 'nothing') return undefined;
  if (tree.kind === 'list') return tree.items.map((item) => (item.kind === 'nothing' ? '' : textsOf(item)));
  const values: Record<string, unknown> = Object.create(null);
  for (const { key, value } of tree.entries)
    if (value.kind !== 'nothing' && key !== '__proto__') values[key] = textsOf(value);
  return values;
}
