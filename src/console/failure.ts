import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { wrapped } from '../report/wrapped.ts';
import { asTyped } from './as-typed.ts';
import { FileWrong } from './file-wrong.ts';
import { problemBlocks } from './problem-blocks.ts';

/** The tool's own failure, and wrong usage; 0, 1 and 2 speak of the machine. */
export const toolFailed = 3;

/** What went wrong and what to try, each on its own line, broken where a terminal ends; never a stack for what a person can mend. */
export function failureText(cause: unknown, columns: number | undefined = process.stderr.columns): string {
  const mended = mendable(cause);
  if (mended) {
    const width = columns === undefined ? Number.POSITIVE_INFINITY : Math.max(columns - 2, 20);
    const said = wrapped(visible(mended.message), 'tellwire: ', '  ', width);
    const blocks =
      cause instanceof FileWrong ? ['', ...problemBlocks(cause.problems, cause.file).split('\n')] : [];
    const tries = wrapped(visible(asTyped(mended.tryNext)), '  Try: ', '    ', width);
    return [...said, ...blocks, ...tries].map((line) => `${line}\n`).join('');
  }
  const text = cause instanceof Error ? (cause.stack ?? cause.message) : String(cause);
  const lines = text.split('\n').map(visible).join('\n');
  return `tellwire: a defect of the tool itself.\n${lines}\n  Try: report it with this text and, where there is one, the session folder.\n`;
}

function mendable(cause: unknown): ToolError | undefined {
  if (cause instanceof ToolError) return cause;
  const code = cause instanceof Error && 'code' in cause ? cause.code : undefined;
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS')
    return new ToolError('internal', messageOf(cause), 'Choose a folder you may write to.', cause);
  if (code === 'ENOSPC')
    return new ToolError(
      'internal',
      messageOf(cause),
      'Make room on the disk, then go on with --resume.',
      cause,
    );
  if (code === 'EISDIR' || code === 'ENOTDIR' || code === 'ENOENT')
    return new ToolError('file-missing', messageOf(cause), 'Check the path.', cause);
  return undefined;
}

const messageOf = (cause: unknown): string => (cause instanceof Error ? cause.message : String(cause));
