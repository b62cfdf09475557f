import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { withBundle } from '../session/bundle.ts';
import { captureWords } from '../words/capture-words.ts';
import { isBundle, isFile } from './is-bundle.ts';

/** Works on a session, whether it is a folder or one file. */
export function withSession<Result>(path: string, work: (folder: string) => Result): Result {
  if (isBundle(path)) return withBundle(path, work);
  if (isFile(path))
    throw new ToolError('session-damaged', captureWords.noSession(visible(path)), captureWords.tryReplay);
  return work(path);
}
