import { describe, expect, it } from 'vitest';
import { formatProblems } from '../../../src/model/machine-file/format.ts';
import { readMachineFile } from '../../../src/model/machine-file/read.ts';

describe('problems of a file on a terminal', () => {
  it('are told one after the other as file, line, column, found, allowed, try', () => {
    const { problems } = readMachineFile('machine: m\nunits: inche\naxes: {Q: {}}\n');
    expect(formatProblems(problems ?? [], 'mill.yaml')).toBe(
      [
        'mill.yaml:2:8 units',
        '  found:   "inche"',
        '  allowed: mm, inch',
        '  try:     write inch',
        '',
        'mill.yaml:3:8 axes.Q',
        '  found:   "Q"',
        '  allowed: X, Y, Z, A, B, C, U, V, W',
        '  try:     use a letter of ISO 841',
        '',
      ].join('\n'),
    );
  });

  it('carry no control byte of the file to the terminal, wherever it stood', () => {
    const { problems } = readMachineFile('machine: m\naxes: {}\n"\\e[31m": "\\e[2J"\nunits: "\\a\\x9b"\n');
    const text = formatProblems(problems ?? [], '\u001b]0;name\u0007.yaml');
    expect(problems).toHaveLength(2);
    expect(text.replaceAll('\n', '')).toMatch(/^[\x20-\x7e]*$/);
    expect(text).toContain('\\x1b[31m');
  });
});
