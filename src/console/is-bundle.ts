import { closeSync, openSync, readSync, statSync } from 'node:fs';

export const isFile = (path: string): boolean => statSync(path, { throwIfNoEntry: false })?.isFile() ?? false;

/** A session in one file, as `report --bundle` makes it: by how it begins (RFC 1952). */
export function isBundle(path: string): boolean {
  if (!isFile(path)) return false;
  const file = openSync(path, 'r');
  try {
    const head = Buffer.alloc(2);
    return readSync(file, head) === 2 && head[0] === 0x1f && head[1] === 0x8b;
  } finally {
    closeSync(file);
  }
}
