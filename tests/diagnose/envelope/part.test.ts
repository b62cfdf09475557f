import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { EnvelopeIssue } from '../../../src/diagnose/envelope/issue.ts';
import { type AxisLayout, layoutOf } from '../../../src/diagnose/envelope/layout.ts';
import { offsetIssues } from '../../../src/diagnose/envelope/offset-issues.ts';
import type { WorkOffsets } from '../../../src/diagnose/envelope/offsets.ts';
import { partIssues } from '../../../src/diagnose/envelope/part-box.ts';
import { readProgram } from '../../../src/diagnose/envelope/program/read.ts';
import { mm } from '../../../src/model/units.ts';
import { machineFrom } from '../stage.ts';

const layouts: readonly AxisLayout[] = machineFrom(`machine: Router
axes:
  X: { homes: negative, soft: [2, 402] }
  Y: { homes: negative, soft: [2, 302] }
  Z: { homes: positive, soft: [-90, -1] }
inputs: {}
`).axes.map((axis) => layoutOf(axis));

const set: WorkOffsets = {
  origins: { G54: { X: mm(100), Y: mm(100), Z: mm(-60) } },
  active: 'G54',
  shift: {},
  toolLength: undefined,
};
const part = 'G21 G90 G0 Z5\nG0 X0 Y0\nG1 Z-10 F200\nX200\nY150\nX0 Y0\nG0 Z5\nM2';
const told = (issues: readonly EnvelopeIssue[]) =>
  issues.map(({ kind, axis, end, by }) =>
    [kind, axis, ...(end ? [end] : []), Number(by.toFixed(3))].join(' '),
  );
const judge = (text: string, offsets: WorkOffsets) => partIssues(readProgram(text), layouts, offsets);

describe('a part put where its work offset puts it', () => {
  it('fits with room on every side', () => {
    expect(judge(part, set)).toEqual([]);
  });

  it('that reaches too far is told on which side, by how much, by which line, and the offset that mends it', () => {
    const [issue] = judge(part, { ...set, origins: { G54: { X: mm(210), Y: mm(100), Z: mm(-60) } } });
    expect(issue).toMatchObject({
      kind: 'outside-soft-limits',
      axis: 'X',
      end: 'positive',
      by: 8,
      line: 4,
      system: 'active',
    });
    expect(issue?.change).toEqual({ what: 'work offset', from: 210, to: 202 });
  });

  it('mended by the offset named fits', () => {
    fc.assert(
      fc.property(fc.integer({ min: -200, max: 600 }), fc.integer({ min: -200, max: 600 }), (x, y) => {
        const offsets = (a: number, b: number): WorkOffsets => ({
          ...set,
          origins: { G54: { X: mm(a), Y: mm(b), Z: mm(-60) } },
        });
        const mended = { X: x, Y: y };
        for (const { axis, change } of judge(part, offsets(x, y)))
          if ((axis === 'X' || axis === 'Y') && change) mended[axis] = change.to;
        expect(judge(part, offsets(mended.X, mended.Y))).toEqual([]);
      }),
    );
  });

  it('larger than the machine fits nowhere', () => {
    expect(told(judge('G21 G0 X0\nX450', set))).toEqual(['box-too-large X 50']);
  });

  it('is judged with the shift that G92 left and the length of the tool', () => {
    expect(told(judge(part, { ...set, shift: { X: mm(110) } }))).toEqual([
      'outside-soft-limits X positive 8',
    ]);
    const long = { ...set, toolLength: mm(57) };
    expect(told(judge(`G43 H1\n${part}`, long))).toEqual([
      'first-retract-too-high Z positive 3',
      'outside-soft-limits Z positive 3',
    ]);
    expect(judge(part, long)).toEqual([]);
  });

  it('is not moved by its offset where it names machine coordinates', () => {
    const [issue] = judge('G21 G53 G0 Z0', set);
    expect(issue).toMatchObject({ kind: 'outside-soft-limits', axis: 'Z', by: 1 });
    expect(issue?.change).toBeUndefined();
  });
});

// Common practice, no source: with home at the top and no work offset set, work Z is machine Z.
describe('a work offset not yet set', () => {
  const unset: WorkOffsets = { ...set, origins: {} };

  it('sends the first retract over the top, by the retract and what the top limit lies below home', () => {
    const [issue] = judge(part, unset);
    expect(issue).toMatchObject({ kind: 'first-retract-too-high', end: 'positive', by: 6, line: 1 });
    expect(issue?.change).toEqual({ what: 'first retract', from: 5, to: -1 });
  });

  it('is named before anything moves', () => {
    expect(told(offsetIssues(unset, layouts, readProgram(part)))).toEqual(['offset-still-zero Z 90']);
    expect(offsetIssues(set, layouts, readProgram(part))).toEqual([]);
  });

  it('while another one is: the zero was set in one system and the program uses the other', () => {
    const other: WorkOffsets = { ...set, origins: { G55: { X: mm(100), Y: mm(100), Z: mm(-60) } } };
    expect(offsetIssues(other, layouts, readProgram(`G54\n${part}`))).toMatchObject([
      { kind: 'other-system-set', system: 'G54' },
    ]);
  });
});

describe('offsets with a mistake in them', () => {
  it('a temporary shift left over is told with its size', () => {
    expect(told(offsetIssues({ ...set, shift: { Y: mm(-12.5) } }, layouts, undefined))).toEqual([
      'temporary-shift-active Y 12.5',
    ]);
  });

  it('one touched off in inches and kept as millimetres, or the other way round, is known by its size', () => {
    const [issue] = offsetIssues(
      { ...set, origins: { G54: { X: mm(100 * 25.4), Z: mm(-60) } } },
      layouts,
      undefined,
    );
    expect(issue).toMatchObject({
      kind: 'offset-inches-as-mm',
      axis: 'X',
      change: { to: expect.closeTo(100, 9) },
    });
  });
});
