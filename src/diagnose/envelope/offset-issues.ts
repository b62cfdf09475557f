import type { AxisLetter } from '../../model/machine.ts';
import { mm } from '../../model/units.ts';
import type { EnvelopeIssue } from './issue.ts';
import type { AxisLayout } from './layout.ts';
import { type ByAxis, type WorkOffsets, type WorkSystem, workSystems } from './offsets.ts';
import type { System } from './program/boxes.ts';
import type { ProgramExtents } from './program/read.ts';

/** Mistakes of the offsets themselves: one not set, another set than the one used, a shift left over, inches typed as millimetres. */
export function offsetIssues(
  offsets: WorkOffsets,
  layouts: readonly AxisLayout[],
  program: Pick<ProgramExtents, 'boxes'> | undefined,
): readonly EnvelopeIssue[] {
  return [
    ...shiftIssues(offsets),
    ...unsetIssues(offsets, layouts, program),
    ...inchIssues(offsets, layouts),
  ];
}

function shiftIssues({ shift }: WorkOffsets): readonly EnvelopeIssue[] {
  return entries(shift).flatMap(([axis, value]) =>
    value === 0
      ? []
      : [
          {
            kind: 'temporary-shift-active',
            axis,
            by: mm(Math.abs(value)),
            change: { what: 'temporary shift', from: value, to: 0 },
          },
        ],
  );
}

/** A system that is used and was never set, on an axis that homes to its top at 0: the work then lies at the switch. */
function unsetIssues(
  offsets: WorkOffsets,
  layouts: readonly AxisLayout[],
  program: Pick<ProgramExtents, 'boxes'> | undefined,
): readonly EnvelopeIssue[] {
  const used = usedSystems(offsets, program);
  const z = layouts.find(({ letter }) => letter === 'Z');
  const isSet = (system: WorkSystem) =>
    entries(offsets.origins[system] ?? {}).some(([, value]) => value !== 0);
  return used.flatMap((system) => {
    const movesZ = !program || program.boxes.some((box) => systemOf(box, offsets) === system && box.axes.Z);
    const top = movesZ ? z : undefined;
    if (isSet(system)) return zeroTop(offsets, system, top);
    const other = workSystems.find((each) => each !== system && isSet(each));
    if (!other) return zeroTop(offsets, system, top);
    const [axis, by] = entries(offsets.origins[other] ?? {}).sort(
      (a, b) => Math.abs(b[1]) - Math.abs(a[1]),
    )[0] ?? ['Z', 0];
    return [{ kind: 'other-system-set', axis, by: mm(Math.abs(by)), system }];
  });
}

function zeroTop(
  offsets: WorkOffsets,
  system: WorkSystem,
  z: AxisLayout | undefined,
): readonly EnvelopeIssue[] {
  if (z?.homes !== 'positive' || (offsets.origins[system]?.Z ?? 0) !== 0) return [];
  const reach = z.soft?.[0] ?? z.ends.negative.trip;
  return reach === undefined
    ? []
    : [{ kind: 'offset-still-zero', axis: 'Z', by: mm(Math.abs(reach)), system }];
}

/** The coordinate systems that a program counts in; what it does not name is the active one. */
export function usedSystems(
  { active }: Pick<WorkOffsets, 'active'>,
  program: Pick<ProgramExtents, 'boxes'> | undefined,
): readonly WorkSystem[] {
  const named = program?.boxes.flatMap((box) => systemOf(box, { active }) ?? []) ?? [active];
  return [...new Set(named)];
}

/** The work system that a box is counted in; undefined where it counts from machine zero. */
export const systemOf = (
  { system }: { readonly system: System },
  { active }: Pick<WorkOffsets, 'active'>,
): WorkSystem | undefined => (system === 'machine' ? undefined : system === 'active' ? active : system);

/** An offset many times the travel that would fit as inches was typed, or touched off, in the other unit. */
function inchIssues(offsets: WorkOffsets, layouts: readonly AxisLayout[]): readonly EnvelopeIssue[] {
  return workSystems.flatMap((system) =>
    entries(offsets.origins[system] ?? {}).flatMap(([axis, value]) => {
      const layout = layouts.find(({ letter }) => letter === axis);
      const [low, high] = layout?.soft ?? [];
      if (low === undefined || high === undefined) return [];
      const fits = (length: number) => length >= low && length <= high;
      if (fits(value) || !fits(value / 25.4)) return [];
      const change = { what: 'work offset', from: value, to: value / 25.4 } as const;
      const by = mm(Math.max(low - value, value - high));
      return [{ kind: 'offset-inches-as-mm', axis, by, system, change } as const];
    }),
  );
}

const entries = (byAxis: ByAxis): [AxisLetter, number][] => Object.entries(byAxis) as [AxisLetter, number][];
