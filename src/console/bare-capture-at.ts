import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { SessionFolder } from '../session/folder.ts';
import { isBundle } from './is-bundle.ts';

/** A capture, and the description that lies beside it, where there is one. */
export interface CaptureThere {
  readonly capture: string;
  readonly stream: string | undefined;
}

/** The capture that a path names where it names no session: a file of `inline`, the folder of `learn`. */
export function bareCaptureAt(path: string): CaptureThere | undefined {
  if (isBundle(path)) return undefined;
  const found = statSync(path, { throwIfNoEntry: false });
  if (found?.isFile()) return { capture: path, stream: undefined };
  const capture = join(path, 'capture.log');
  if (!found?.isDirectory() || new SessionFolder(path).exists || !existsSync(capture)) return undefined;
  const stream = join(path, 'stream.yaml');
  return { capture, stream: existsSync(stream) ? stream : undefined };
}
