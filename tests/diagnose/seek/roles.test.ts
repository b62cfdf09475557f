import { describe, expect, it } from 'vitest';
import { expectationOf } from '../../../src/diagnose/seek/expect.ts';
import { seekRoles } from '../../../src/diagnose/seek/roles.ts';
import { mm } from '../../../src/model/units.ts';
import { machineFrom } from '../stage.ts';
import { machine, proved, rolesOf } from './played.ts';

const oneAxis = (axis: string, input: string) => {
  const found = seekRoles(
    machineFrom(
      `machine: One\naxes: { X: { ${axis} } }\ninputs: { home: { duty: [home], axis: X, place: there, ${input} } }\n`,
    ),
    'X',
    {},
  );
  if (!found) throw new Error('X');
  return found;
};

describe('what each input means to the seek of an axis', () => {
  it('is home, far end, another axis, or a probe', () => {
    expect(rolesOf('X')).toMatchObject({
      home: ['x-home'],
      farEnd: ['x-far'],
      probes: ['probe'],
      toward: -1,
      towardFrom: 'end',
    });
    expect(rolesOf('X').otherAxes).toEqual(['y-left', 'y-right', 'z-top', 'a-dog', 'u-ends']);
    expect(rolesOf('Y')).toMatchObject({ home: ['y-left', 'y-right'], farEnd: [], overtravel: 3 });
  });

  it('follows the presses: where the switch was proved to be wired, not where it was drawn', () => {
    const crossed = seekRoles(machine, 'X', { ...proved, 'x-home': 'z-top', 'z-top': 'x-home' });
    expect(crossed?.home).toEqual(['z-top']);
  });

  it('is unknown for an axis the file does not name', () => {
    expect(seekRoles(machine, 'W', {})).toBeUndefined();
  });

  it('knows a switch whose place is known only where it was pressed, is alone on its input, and has a side', () => {
    expect(rolesOf('X').placed).toBe(true);
    expect(rolesOf('X', false).placed).toBe(false);
    expect(rolesOf('A').placed).toBe(false);
    expect(rolesOf('U')).toMatchObject({ placed: false, sharesEnds: true });
  });
});

describe('the way to the switch', () => {
  // ISO 841 counts positive where the tool goes over the work.
  it('is that to its end, else to its side, else as the setting has it', () => {
    expect(oneAxis('homes: positive, positive: right', 'end: negative, side: left')).toMatchObject({
      toward: -1,
      towardFrom: 'end',
    });
    expect(oneAxis('homes: positive, positive: right', 'side: left')).toMatchObject({
      toward: -1,
      towardFrom: 'side',
    });
    expect(oneAxis('homes: positive', 'side: left')).toMatchObject({ toward: 1, towardFrom: 'setting' });
    expect(oneAxis('travel: 1', 'side: left').toward).toBeUndefined();
  });

  it('does not follow from a side where the table moves', () => {
    expect(oneAxis('homes: positive, positive: right, moves: table', 'side: left')).toMatchObject({
      toward: 1,
      towardFrom: 'setting',
    });
  });

  // Common practice, no source: on a router or mill, X and Y usually seek negative, Z positive to its top.
  it('is negative for X and Y and positive for Z on a common machine', () => {
    expect([rolesOf('X').toward, rolesOf('Y').toward, rolesOf('Z').toward]).toEqual([-1, -1, 1]);
  });
});

describe('what a seek is watched against', () => {
  const grid = { rest: {}, step: mm(0.0125), gridKnown: true };

  it('are all limits but its own', () => {
    expect(expectationOf(rolesOf('X'), grid)).toMatchObject({
      inputs: ['x-home'],
      others: [
        { input: 'x-far' },
        { input: 'y-left', axis: 'Y' },
        { input: 'y-right', axis: 'Y' },
        { input: 'z-top', axis: 'Z' },
        { input: 'a-dog', axis: 'A' },
        { input: 'u-ends', axis: 'U' },
      ],
      toward: -1,
    });
  });

  it('has Z warned of the work below it only where no probe could be meant to touch it', () => {
    expect(expectationOf(rolesOf('Z'), grid).towardWork).toBeUndefined();
    const bare = seekRoles(
      machineFrom('machine: Z\naxes: { Z: { homes: negative } }\ninputs: {}\n'),
      'Z',
      {},
    );
    expect(bare && expectationOf(bare, grid).towardWork).toBe(-1);
    expect(expectationOf(rolesOf('X'), grid).towardWork).toBeUndefined();
  });
});
