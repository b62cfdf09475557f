import { isAlias, isMap, isScalar, isSeq, type Node, type Pair } from 'yaml';
import { type Path, quoted, type Wrong } from './problem.ts';

/** A YAML document as far as a machine file needs it: text, lists and named entries, each with its place in the file. */
export type Tree =
  | { readonly kind: 'text'; readonly at: number; readonly text: string; readonly quoted: boolean }
  | { readonly kind: 'list'; readonly at: number; readonly items: readonly Tree[] }
  | { readonly kind: 'map'; readonly at: number; readonly entries: readonly Entry[] }
  | { readonly kind: 'nothing'; readonly at: number };

export interface Entry {
  readonly key: string;
  readonly keyAt: number;
  readonly value: Tree;
}

/** A machine file is five deep at most; what is deeper is refused before it can cost anything. */
const deepest = 8;
const empty = new Set(['', '~', 'null']);

/** Takes the document apart, saying what a machine file has no use for: aliases, keys that are no words, the same key twice. */
export function treeOf(node: unknown, say: (wrong: Wrong) => void, path: Path = [], start = 0): Tree {
  const at = (node as Node | null)?.range?.[0] ?? start;
  const refuse = (found: string, allowed: string, tryNext: string): Tree => {
    say({ path, offset: at, found, allowed, tryNext });
    return { kind: 'nothing', at };
  };
  if (path.length > deepest)
    return refuse('too many levels', 'inputs, their switches and their values', 'take a level out');
  if (isAlias(node))
    return refuse(quoted(`*${node.source}`), 'the value itself', 'write the value out in each place');
  if (isScalar(node)) {
    const plain = node.type === 'PLAIN';
    const text = String(node.value ?? '');
    return plain && empty.has(text) ? { kind: 'nothing', at } : { kind: 'text', at, text, quoted: !plain };
  }
  if (isSeq(node))
    return {
      kind: 'list',
      at,
      items: node.items.map((item, index) => treeOf(item, say, [...path, index], at)),
    };
  if (isMap(node)) return { kind: 'map', at, entries: entriesOf(node.items, say, path, at) };
  return { kind: 'nothing', at };
}

function entriesOf(pairs: readonly Pair[], say: (wrong: Wrong) => void, path: Path, start: number): Entry[] {
  const entries = new Map<string, Entry>();
  for (const pair of pairs) {
    const keyAt = (pair.key as Node | null)?.range?.[0] ?? start;
    if (!isScalar(pair.key)) {
      say({
        path,
        offset: keyAt,
        found: 'a key that is no word',
        allowed: 'a word before the colon',
        tryNext: 'name the entry',
      });
      continue;
    }
    const key = String(pair.key.value ?? '');
    if (entries.has(key)) {
      say({
        path: [...path, key],
        offset: keyAt,
        found: `${quoted(key)} a second time`,
        allowed: 'each name once',
        tryNext: 'take one of the two out or rename it',
      });
      continue;
    }
    entries.set(key, { key, keyAt, value: treeOf(pair.value, say, [...path, key], keyAt) });
  }
  return [...entries.values()];
}

export const entryOf = (tree: Tree | undefined, key: string): Entry | undefined =>
  tree?.kind === 'map' ? tree.entries.find((entry) => entry.key === key) : undefined;

/** The offset of what stands at a path, or of the nearest thing around it that stands. */
export function offsetOf(tree: Tree, path: Path): number {
  let here: Tree = tree;
  let offset = tree.at;
  for (const part of path) {
    const next: Tree | undefined =
      here.kind === 'list' && typeof part === 'number'
        ? here.items[part]
        : entryOf(here, String(part))?.value;
    if (next === undefined) return offset;
    offset = next.kind === 'nothing' ? (entryOf(here, String(part))?.keyAt ?? next.at) : next.at;
    here = next;
  }
  return offset;
}
