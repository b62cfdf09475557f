import type { AxisLetter, End } from '../../model/machine.ts';
import { type Mm, mm } from '../../model/units.ts';
import type { EnvelopeIssue } from './issue.ts';
import { type AxisLayout, ends, outwards } from './layout.ts';
import { originOf, type WorkOffsets } from './offsets.ts';
import type { Extent, ProgramBox } from './program/boxes.ts';
import type { ProgramExtents } from './program/read.ts';

/** What a program, put where its offsets put it, does not keep to: each side of each axis, by how much, and the offset that would make it fit. */
export function partIssues(
  program: Pick<ProgramExtents, 'boxes' | 'firstZ' | 'usesToolLength'>,
  layouts: readonly AxisLayout[],
  offsets: WorkOffsets,
): readonly EnvelopeIssue[] {
  const layoutBy = (letter: AxisLetter) => layouts.find((layout) => layout.letter === letter);
  const boxes = program.boxes.flatMap((box) =>
    Object.entries(box.axes).flatMap(([letter, extent]) => {
      const layout = layoutBy(letter as AxisLetter);
      return layout && extent ? axisIssues(box, extent, layout, offsets, program.usesToolLength) : [];
    }),
  );
  return [...retractIssues(program, layoutBy('Z'), offsets), ...boxes];
}

/** Where an axis may go: its soft limits, else its switches, else solid metal. */
export function boundsOf({
  soft,
  ends: { negative, positive },
}: AxisLayout): Readonly<Record<End, Mm | undefined>> {
  return {
    negative: soft?.[0] ?? negative.trip ?? negative.stop,
    positive: soft?.[1] ?? positive.trip ?? positive.stop,
  };
}

function axisIssues(
  { system }: ProgramBox,
  extent: Extent,
  layout: AxisLayout,
  offsets: WorkOffsets,
  usesToolLength: boolean,
): readonly EnvelopeIssue[] {
  const { letter: axis } = layout;
  const origin = originOf(offsets, system, axis, usesToolLength);
  const bounds = boundsOf(layout);
  const over = ends.flatMap((end) => {
    const bound = bounds[end];
    const reach = (end === 'positive' ? extent.high : extent.low) + origin;
    const by = bound === undefined ? 0 : (reach - bound) * outwards(end);
    return by > hair
      ? [{ end, by: mm(by), line: end === 'positive' ? extent.highLine : extent.lowLine }]
      : [];
  });
  const span = extent.high - extent.low;
  const room =
    bounds.negative === undefined || bounds.positive === undefined
      ? Infinity
      : bounds.positive - bounds.negative;
  if (span > room + hair) {
    const [worst] = [...over].sort((a, b) => b.by - a.by);
    return [{ kind: 'box-too-large', axis, by: mm(span - room), system, ...(worst && { line: worst.line }) }];
  }
  const set = origin - (offsets.shift[axis] ?? 0);
  return over.map(({ end, by, line }) => ({
    kind: 'outside-soft-limits',
    axis,
    end,
    by,
    line,
    system,
    ...(system !== 'machine' && {
      change: { what: 'work offset', from: set, to: set - outwards(end) * by } as const,
    }),
  }));
}

/** A micrometre of rounding fits anywhere. */
const hair = 0.001;

/** With the top at home and a work offset not yet set, the first retract goes over the top. */
function retractIssues(
  { firstZ, usesToolLength }: Pick<ProgramExtents, 'firstZ' | 'usesToolLength'>,
  layout: AxisLayout | undefined,
  offsets: WorkOffsets,
): readonly EnvelopeIssue[] {
  const top = layout && boundsOf(layout).positive;
  if (!firstZ || !layout || top === undefined || firstZ.system === 'machine') return [];
  const by = firstZ.value + originOf(offsets, firstZ.system, 'Z', usesToolLength) - top;
  if (by <= hair) return [];
  return [
    {
      kind: 'first-retract-too-high',
      axis: 'Z',
      end: 'positive',
      by: mm(by),
      line: firstZ.line,
      system: firstZ.system,
      change: { what: 'first retract', from: firstZ.value, to: firstZ.value - by },
    },
  ];
}
