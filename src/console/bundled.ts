import { closeSync, openSync, readSync, statSync } from 'node:fs';
import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { withBundle } from '../session/bundle.ts';
import { captureWords } from '../words/capture-words.ts';

const isFile = (path: string): boolean => statSync(path, { throwIfNoEntry: false })?.isFile() ?? false;

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

/** Works on a session, whether it is a folder or one file. */
export function withSession<Result>(path: string, work: (folder: string) => Result): Result {
  if (isBundle(path)) return withBundle(path, work);
  if (isFile(path))
    throw new ToolError('session-damaged', captureWords.noSession(visible(path)), captureWords.tryReplay);
  return work(path);
}
