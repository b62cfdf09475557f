import { describe, expect, it } from 'vitest';
import { readMachineFile } from '../../../src/model/machine-file/read.ts';
import { starterFile } from '../../../src/model/machine-file/starter.ts';
import { file, marked } from './told-wrong.ts';

const doubted = (text: string) => readMachineFile(text).doubts ?? [];

describe('a right file is doubted', () => {
  it.each([
    [
      'where a home switch has no axis',
      file('  >>x-home: { duty: [home] }'),
      'inputs.x-home.axis',
      'axis: X',
    ],
    [
      'where its duty is one of two',
      file('  >>corner: { duty: [limit, home] }'),
      'inputs.corner.axis',
      'axis: X',
    ],
    [
      'where a switch of a chain has none',
      file(
        '  y: { joined: series, switches: { >>y-min: { duty: [home] }, y-max: { duty: [home], axis: Y } } }',
      ),
      'inputs.y.switches.y-min.axis',
      'axis',
    ],
  ])('%s', (_rule, withMark, path, tryNext) => {
    const { text, at } = marked(withMark);
    const doubts = doubted(text);
    expect(doubts.map(({ line, column, path: where }) => `${line}:${column} ${where}`)).toEqual([
      `${at[0]} ${path}`,
    ]);
    expect(doubts[0]?.tryNext).toContain(tryNext);
  });

  it.each([
    ['where the axis is named', file('  a: { duty: [home], axis: X }')],
    [
      'where the chain names it for all its switches',
      file('  a: { joined: series, axis: X, switches: { b: { duty: [home] } } }'),
    ],
    ['for a limit switch, which may guard several axes', file('  a: { duty: [limit] }')],
    ['for the starter file', starterFile()],
  ])('not %s', (_rule, text) => expect(doubted(text)).toEqual([]));

  it('and read all the same', () =>
    expect(readMachineFile(file('  x-home: { duty: [home] }')).machine?.inputs).toHaveLength(1));
});
