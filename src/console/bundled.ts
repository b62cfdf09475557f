import { statSync } from 'node:fs';
import { withBundle } from '../session/bundle.ts';

/** A session in one file, as `report --bundle` makes it. */
export const isBundle = (path: string): boolean =>
  statSync(path, { throwIfNoEntry: false })?.isFile() ?? false;

/** Works on a session, whether it is a folder or one file. */
export const withSession = <Result>(path: string, work: (folder: string) => Result): Result =>
  isBundle(path) ? withBundle(path, work) : work(path);
