import { copyFileSync, existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { create, extract } from 'tar';
import { ToolError } from '../model/tool-error.ts';
import { SessionFolder, sessionFiles } from './folder.ts';
import { redacted } from './redact.ts';
import { writeInPieces } from './session-writer.ts';

const inside = 'session';

/** Files that a bundle may hold. Anything else in one is left where it is. */
const belongs = (path: string): boolean => sessionFiles.some((name) => path === `${inside}/${name}`);

/**
 * Packs a session into one file, a tar archive (POSIX.1-2001) under gzip (RFC 1952): the same session gives the same bytes.
 * Reports are made from it where they are needed and are not packed. `redact` leaves out names, places and paths.
 */
export function packBundle(session: string, file: string, redact: boolean): void {
  const folder = new SessionFolder(session);
  folder.header();
  if (existsSync(file))
    throw new ToolError(
      'folder-not-empty',
      `${file} is there already.`,
      'Name another file, or move that one away.',
    );
  withTemporary((work) => {
    const root = join(work, inside);
    mkdirSync(root);
    if (redact) for (const [name, pieces] of redacted(folder)) writeInPieces(join(root, name), pieces);
    else
      for (const name of sessionFiles.filter((each) => existsSync(folder.file(each))))
        copyFileSync(folder.file(name), join(root, name));
    const names = sessionFiles.filter((name) => existsSync(join(root, name)));
    create(
      { sync: true, file, cwd: work, gzip: true, portable: true, noMtime: true },
      names.map((name) => `${inside}/${name}`),
    );
  });
}

/** Unpacks a bundle where nobody else looks, works on the folder and takes it away again, once the work is done. Throws ToolError `session-damaged`. */
export function withBundle<Result>(file: string, work: (folder: string) => Result): Result {
  return withTemporary((place) => {
    try {
      extract({
        sync: true,
        file,
        cwd: place,
        strict: true,
        preserveOwner: false,
        filter: (path, entry) => belongs(path) && 'type' in entry && entry.type === 'File',
      });
    } catch (cause) {
      throw new ToolError(
        'session-damaged',
        `${file} is no bundle of a session.`,
        'Ask for the file once more.',
        cause,
      );
    }
    return work(join(place, inside));
  });
}

function withTemporary<Result>(work: (folder: string) => Result): Result {
  const folder = mkdtempSync(join(tmpdir(), 'tellwire-bundle-'));
  const clear = () => rmSync(folder, { recursive: true, force: true });
  try {
    const result = work(folder);
    if (result instanceof Promise) return result.finally(clear) as Result;
    clear();
    return result;
  } catch (cause) {
    clear();
    throw cause;
  }
}
