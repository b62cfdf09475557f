import { expect, it } from 'vitest';
import { readMachineFile } from '../../../src/model/machine-file/read.ts';

/** A rule, a file with a mark before the spot that is wrong, the path, and parts of what is found, allowed and advised. */
export type Row = readonly [
  rule: string,
  text: string,
  path: string,
  found: string,
  allowed: string,
  tryNext: string,
];

/** A file that is right but for what a row puts into it. */
export const file = (inputs: string, axes = '  X: { motors: 2 }\n  A: {}', top = 'units: mm') =>
  `machine: m\n${top}\ninputs:\n${inputs}\naxes:\n${axes}\n`;

/** An input with the entries of a row. */
export const input = (entries: string) => file(`  a: { duty: [limit], ${entries} }`);
export const axis = (entries: string) => file('  a: { duty: [limit] }', `  X: { ${entries} }`);

export const mark = '>>';

/** Line and column of each mark, counted from 1, and the text without them. */
export function marked(text: string): { text: string; at: string[] } {
  const [first = '', ...more] = text.split(mark);
  let before = first;
  const at = more.map((piece) => {
    const lines = before.split('\n');
    before += piece;
    return `${lines.length}:${(lines.at(-1) ?? '').length + 1}`;
  });
  return { text: before, at };
}

export const places = (text: string): string[] =>
  (readMachineFile(text).problems ?? []).map(({ line, column, path }) => `${line}:${column} ${path}`);

export const told = (rows: readonly Row[]): void =>
  it.each(rows)('with %s', (_, withMark, path, found, allowed, tryNext) => {
    const { text, at } = marked(withMark);
    expect(places(text)).toEqual([`${at[0]} ${path}`]);
    const [problem] = readMachineFile(text).problems ?? [];
    expect(problem?.found).toContain(found);
    expect(problem?.allowed).toContain(allowed);
    expect(problem?.tryNext).toContain(tryNext);
  });
