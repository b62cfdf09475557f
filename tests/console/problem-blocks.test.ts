import { describe, expect, it } from 'vitest';
import { failureText } from '../../src/console/failure.ts';
import { FileWrong } from '../../src/console/file-wrong.ts';
import { problemBlocks } from '../../src/console/problem-blocks.ts';
import { readMachineFile } from '../../src/model/machine-file/read.ts';

describe('problems of a file on a terminal', () => {
  it('are told one after the other as file, line, column, found, allowed, try', () => {
    const { problems } = readMachineFile('machine: m\nunits: inche\naxes: {Q: {}}\n');
    expect(problemBlocks(problems ?? [], 'mill.yaml')).toBe(
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
    const text = problemBlocks(problems ?? [], '\u001b]0;name\u0007.yaml');
    expect(problems).toHaveLength(2);
    expect(text.replaceAll('\n', '')).toMatch(/^[\x20-\x7e]*$/);
    expect(text).toContain('\\x1b[31m');
  });

  it('stay within a terminal of 80 columns, the lines of one entry under each other', () => {
    const { problems } = readMachineFile('machine: m\naxes: {}\ninputs: { a: { duty: [limit], hue: 7 } }\n');
    const lines = problemBlocks(problems ?? [], 'mill.yaml').split('\n');
    for (const line of lines) expect(line.length).toBeLessThan(80);
    const at = lines.findIndex((line) => line.startsWith('  allowed: '));
    expect(lines[at + 1]).toMatch(/^ {11}[a-z]/);
  });
});

describe('a file that a command cannot use', () => {
  it('is laid out problem by problem, as check lays it out', () => {
    const { problems = [] } = readMachineFile('machine: m\nunits: inche\naxes: {Q: {}}\n');
    const text = failureText(
      new FileWrong('machine file', problems, 'mill.yaml', 'tellwire check mill.yaml'),
    );
    expect(text).toContain(problemBlocks(problems, 'mill.yaml'));
    expect(text).toMatch(
      /^tellwire: The machine file cannot be used as it stands:\n\nmill\.yaml:2:8 units\n/,
    );
    expect(text).toMatch(/\n {2}Try: Mend it; `tellwire check mill\.yaml` says when it is right\.\n$/);
  });
});
