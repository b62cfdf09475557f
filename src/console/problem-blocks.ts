import type { FileProblem } from '../model/machine-file/problem.ts';
import { visible } from '../model/visible.ts';
import { wrapped } from '../report/wrapped.ts';
import { asTyped } from './as-typed.ts';

/** Problems for a terminal, one block each: file:line:column, what was found, what is allowed, what to try. No control byte of the file reaches it. */
export function problemBlocks(problems: readonly FileProblem[], fileName: string): string {
  return problems.map((problem) => block(problem, fileName)).join('\n');
}

const block = ({ line, column, path, found, allowed, tryNext }: FileProblem, fileName: string): string =>
  [
    `${visible(fileName)}:${line}:${column}${path === '' ? '' : ` ${visible(path)}`}`,
    ...told('found:', found),
    ...told('allowed:', allowed),
    ...told('try:', asTyped(tryNext)),
    '',
  ].join('\n');

const told = (head: string, text: string): readonly string[] =>
  wrapped(visible(text), `  ${head.padEnd(9)}`, ' '.repeat(11));
