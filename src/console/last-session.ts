import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { SessionFolder } from '../session/folder.ts';

/** The session below a folder that began last, of those `suits` takes; undefined where there is none. Folders that are no session are passed over. */
export function lastSession(below: string, suits: (folder: SessionFolder) => boolean): string | undefined {
  if (!existsSync(below)) return undefined;
  const found = readdirSync(below, { withFileTypes: true })
    .filter((each) => each.isDirectory())
    .map((each) => new SessionFolder(join(below, each.name)))
    .filter((folder) => folder.exists && isSound(folder) && suits(folder));
  return found.toSorted((a, b) => (a.header().started < b.header().started ? 1 : -1))[0]?.path;
}

function isSound(folder: SessionFolder): boolean {
  try {
    folder.header();
    return true;
  } catch {
    return false;
  }
}
