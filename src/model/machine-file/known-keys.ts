import { nearest } from '../nearest.ts';
import { meantKey } from './meant.ts';
import { type Path, quoted, type Wrong } from './problem.ts';
import type { Tree } from './tree.ts';

/** Says which keys of an object of the file are not known there, with the nearest one that is, or where they do belong. */
export function sayUnknownKeys(
  tree: Tree,
  path: Path,
  allowed: readonly string[],
  elsewhere: Readonly<Record<string, readonly string[]>>,
  say: (wrong: Wrong) => void,
): void {
  if (tree.kind !== 'map') return;
  for (const { key, keyAt, value } of tree.entries) {
    if (allowed.includes(key)) continue;
    say({
      path: [...path, key],
      offset: keyAt,
      found: quoted(key),
      allowed: allowed.join(', '),
      tryNext: advice(key, value, allowed, elsewhere),
    });
  }
}

function advice(
  key: string,
  value: Tree,
  allowed: readonly string[],
  elsewhere: Readonly<Record<string, readonly string[]>>,
): string {
  const home = Object.entries(elsewhere).find(([, keys]) => keys.includes(key))?.[0];
  if (home !== undefined) return `move it to ${home}`;
  const meant = meantKey(key, allowed);
  if (meant === 'voltage' && value.kind === 'text' && /^\d+(\.\d+)?$/.test(value.text))
    return `write voltage: ${value.text} V`;
  const near = meant ?? nearest(key, allowed);
  return near === undefined ? 'take it out' : `write ${near}`;
}
