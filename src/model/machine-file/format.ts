import { visible } from '../visible.ts';
import type { FileProblem } from './problem.ts';

/** Problems for a terminal, one block each: file:line:column, what was found, what is allowed, what to try. No control byte of the file reaches it. */
export function formatProblems(problems: readonly FileProblem[], fileName: string): string {
  return problems.map((problem) => block(problem, fileName)).join('\n');
}

const block = ({ line, column, path, found, allowed, tryNext }: FileProblem, fileName: string): string =>
  [
    `${visible(fileName)}:${line}:${column}${path === '' ? '' : ` ${visible(path)}`}`,
    `  found:   ${visible(found)}`,
    `  allowed: ${visible(allowed)}`,
    `  try:     ${visible(tryNext)}`,
    '',
  ].join('\n');
