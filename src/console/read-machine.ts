import { readFileSync } from 'node:fs';
import type { Machine } from '../model/machine.ts';
import { readMachineFile } from '../model/machine-file/read.ts';
import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { FileWrong } from './file-wrong.ts';

/** The text of a file a person named. Throws ToolError `file-missing`. */
export function textOfFile(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (cause) {
    const why = cause instanceof Error && 'code' in cause ? ` (${String(cause.code)})` : '';
    throw new ToolError(
      'file-missing',
      `${visible(path)} cannot be read${why}.`,
      'Check the path and the name.',
      cause,
    );
  }
}

/** The machine of a file's text. Throws FileWrong, which names every problem at once. */
export function machineIn(text: string, path: string): Machine {
  const read = readMachineFile(text);
  if (read.machine) return read.machine;
  throw new FileWrong('machine file', read.problems, path, `tellwire check ${visible(path)}`);
}
