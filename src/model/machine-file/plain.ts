import type { Tree } from './tree.ts';

/** Fields whose value is always text, however much it looks like a number: a terminal called 007 stays 007. */
const textFields = new Set(['machine', 'stand', 'place', 'terminal', 'connector']);
const number = /^[-+]?\d{1,15}(?:\.\d{1,15})?$/;

/** The values alone, for zod: text, numbers, lists, objects without a prototype. What was left empty is left out. */
export function plainOf(tree: Tree, field = ''): unknown {
  if (tree.kind === 'text')
    return !tree.quoted && !textFields.has(field) && number.test(tree.text) ? Number(tree.text) : tree.text;
  if (tree.kind === 'list') return tree.items.map((item) => plainOf(item, field));
  if (tree.kind === 'nothing') return undefined;
  const values: Record<string, unknown> = Object.create(null);
  for (const { key, value } of tree.entries) {
    // Assigning to this one name would set a prototype instead of a value.
    if (value.kind !== 'nothing' && key !== '__proto__') values[key] = plainOf(value, key);
  }
  return values;
}

/** How what stands there looks in the file, for "found". */
export function foundText(tree: Tree | undefined): string {
  if (tree === undefined || tree.kind === 'nothing') return 'nothing';
  if (tree.kind === 'list') return `a list of ${tree.items.length}`;
  if (tree.kind === 'map') return `entries: ${tree.entries.map((entry) => entry.key).join(', ')}`;
  return tree.text;
}
