import { expect, it } from 'vitest';
import { offsetIssues } from '../../../src/diagnose/envelope/offset-issues.ts';
import { untold } from '../../../src/diagnose/envelope/offsets.ts';
import { placed } from '../../../src/diagnose/envelope/placed.ts';
import { readProgram } from '../../../src/diagnose/envelope/program/read.ts';
import { mm } from '../../../src/model/units.ts';

// RS-274, NISTIR 6556, 3.5.13: what follows G54 counts from one work zero, what follows G55 from another; G53 from machine zero.
const program = readProgram('G21 G90\nG54 G0 X10 Y20 Z5\nG55 G0 X30\nG53 G0 Z0\nM2\n');

it('a program lies nowhere while no work zero was told, but for what counts from machine zero', () => {
  const { program: known, isWhole } = placed(program, untold);
  expect(isWhole).toBe(false);
  expect(known.boxes.map(({ system, axes }) => [system, Object.keys(axes)])).toEqual([['machine', ['Z']]]);
  expect(known.firstZ).toBeUndefined();
});

it('a work zero that was told for one axis in one system places that axis in that system alone', () => {
  const offsets = { ...untold, origins: { G54: { X: mm(100) } } };
  const { program: known, isWhole } = placed(program, offsets);
  expect(isWhole).toBe(false);
  expect(known.boxes.map(({ system, axes }) => [system, Object.keys(axes)])).toEqual([
    ['G54', ['X']],
    ['machine', ['Z']],
  ]);
  // Of Z nobody said anything: its offset is not taken to be zero.
  expect(offsetIssues(offsets, [], known)).toEqual([]);
});

it('a program is placed whole where each zero that it counts from was told', () => {
  const told = { X: mm(100), Y: mm(50), Z: mm(-40) };
  const { program: known, isWhole } = placed(program, { ...untold, origins: { G54: told, G55: told } });
  expect(isWhole).toBe(true);
  expect(known).toEqual(program);
});
