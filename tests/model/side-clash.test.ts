import { describe, expect, it } from 'vitest';
import { readMachineFile } from '../../src/model/machine-file/read.ts';
import { sideClashes } from '../../src/model/side-clash.ts';

const clashes = (axis: string, entries: string) => {
  const { machine } = readMachineFile(
    `machine: m\naxes: {X: {${axis}}}\ninputs: {a: {duty: [limit], axis: X, ${entries}}}\n`,
  );
  if (machine === undefined) throw new Error('not read');
  return sideClashes(machine);
};

// ISO 841 (from memory): an axis counts positive where the tool goes over the work.
describe('the side a switch is seen on', () => {
  it.each([
    ['right', 'positive', 'right'],
    ['right', 'negative', 'left'],
    ['left', 'positive', 'left'],
    ['back', 'negative', 'front'],
    ['front', 'negative', 'back'],
    ['top', 'positive', 'top'],
    ['top', 'negative', 'bottom'],
    ['bottom', 'negative', 'top'],
  ])('fits where positive points %s and its %s end is seen on the %s', (positive, end, side) => {
    expect(clashes(`positive: ${positive}`, `end: ${end}, side: ${side}`)).toEqual([]);
  });

  it.each([
    ['right', 'positive', 'left'],
    ['right', 'negative', 'right'],
    ['back', 'positive', 'front'],
    ['top', 'negative', 'top'],
    ['right', 'negative', 'front'],
  ])('clashes where positive points %s and its %s end is seen on the %s', (positive, end, side) => {
    expect(clashes(`positive: ${positive}`, `end: ${end}, side: ${side}`)).toEqual([
      { subject: 'a', finding: { kind: 'side-clash', axis: 'X', side, end, positive } },
    ]);
  });

  it('shows nothing where the file leaves one of the three out', () => {
    expect(clashes('', 'end: positive, side: left')).toEqual([]);
    expect(clashes('positive: right', 'side: left')).toEqual([]);
    expect(clashes('positive: right', 'end: positive')).toEqual([]);
  });

  it('shows nothing where the table moves, since the switch may ride on it or stand beside it', () => {
    expect(clashes('positive: right, moves: table', 'end: positive, side: left')).toEqual([]);
    expect(clashes('positive: right, moves: table', 'end: positive, side: right')).toEqual([]);
    expect(clashes('positive: right, moves: tool', 'end: positive, side: left')).toHaveLength(1);
  });
});
