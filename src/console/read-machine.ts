import { readFileSync } from 'node:fs';
import type { Machine } from '../model/machine.ts';
import type { FileProblem } from '../model/machine-file/problem.ts';
import { readMachineFile } from '../model/machine-file/read.ts';
import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { counted } from '../words/figures.ts';

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

/** The machine of a file's text. Throws ToolError `file-wrong` that names every problem at once. */
export function machineIn(text: string, path: string): Machine {
  const read = readMachineFile(text);
  if (read.machine) return read.machine;
  const lines = read.problems.map((each) => problemText(each, path)).join(' ');
  throw new ToolError(
    'file-wrong',
    `${counted(read.problems.length, 'thing is', 'things are')} wrong with the machine file. ${lines}`,
    `tellwire check ${visible(path)} shows them one a line.`,
  );
}

/** "table.yaml:7:11: inputs.x-home.duty: found "hom"; allowed: home, limit. Try: ..." */
export function problemText(
  { line, column, path, found, allowed, tryNext }: FileProblem,
  file: string,
): string {
  const where = path === '' ? '' : ` ${path}:`;
  return visible(`${file}:${line}:${column}:${where} found ${found}; allowed: ${allowed}. Try: ${tryNext}.`);
}
