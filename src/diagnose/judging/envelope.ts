import type { Finding } from '../../model/finding.ts';
import { knownOnly } from '../../model/known-only.ts';
import { limitKindOf } from '../../model/limits-finding.ts';
import { type Axis, type AxisLetter, allSwitches, type Machine } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import type { Mm } from '../../model/units.ts';
import type { EvidenceLevel, Missing, Verdict } from '../../model/verdict.ts';
import { envelopeIssues } from '../envelope/conditions.ts';
import { envelopeFacts } from '../envelope/facts.ts';
import type { EnvelopeIssue } from '../envelope/issue.ts';
import { type AxisLayout, ends, layoutOf } from '../envelope/layout.ts';
import { offsetIssues } from '../envelope/offset-issues.ts';
import { untold, type WorkOffsets, type WorkSystem, workSystems } from '../envelope/offsets.ts';
import { partIssues } from '../envelope/part-box.ts';
import { placed } from '../envelope/placed.ts';
import { type ProgramExtents, readProgram } from '../envelope/program/read.ts';
import { axesAsked } from '../scope/axes-asked.ts';
import { observedOf } from './observed-limits.ts';
import { statusOf, withoutEvidence } from './status.ts';

/** What was told about one axis beside the file. */
export interface EnvelopeEvidence {
  readonly axis: AxisLetter;
  readonly soft: readonly [Mm, Mm] | undefined;
  readonly origins: Readonly<Partial<Record<WorkSystem, Mm>>>;
  /** The temporary shift in force; undefined where it was not asked, or nobody knew. */
  readonly shift: Mm | undefined;
}

/** One verdict an axis, and one about the program where one was given. */
export function judgeEnvelope(items: readonly EnvelopeEvidence[], scene: Scene): readonly Verdict[] {
  const program = scene.program === undefined ? undefined : readProgram(scene.program);
  const offsets = offsetsOf(items);
  const layouts = items.flatMap((item) => {
    const axis = scene.machine.axes.find(({ letter }) => letter === item.axis);
    return axis ? [layoutOf({ ...axis, soft: item.soft }, observedOf(item.axis, scene))] : [];
  });
  const known = program && placed(program, offsets);
  const issues = [
    ...layouts.flatMap(envelopeIssues),
    ...(known ? partIssues(known.program, layouts, offsets) : []),
    ...(known && Object.keys(offsets.origins).length > 0
      ? offsetIssues(offsets, layouts, known.program)
      : []),
  ];
  const axes = axesAsked(scene).map((axis) =>
    verdictOf(
      axis,
      layouts.find(({ letter }) => letter === axis.letter),
      issues,
      offsets,
      known?.program,
      scene,
    ),
  );
  return program && known ? [...axes, programVerdict(program, known.isWhole)] : axes;
}

/** A work zero whose shift nobody knew may lie anywhere: it counts as not told. */
function offsetsOf(items: readonly EnvelopeEvidence[]): WorkOffsets {
  const sure = items.filter(({ shift }) => shift !== undefined);
  const origins = Object.fromEntries(
    workSystems.flatMap((system) => {
      const axes = sure.flatMap((item) => {
        const at = item.origins[system];
        return at === undefined ? [] : [[item.axis, at] as const];
      });
      return axes.length === 0 ? [] : [[system, Object.fromEntries(axes)]];
    }),
  );
  return { ...untold, origins, shift: Object.fromEntries(sure.map(({ axis, shift }) => [axis, shift])) };
}

/** An axis without limits, switches or travel in the file, as a spindle or a rotary table, is asked about nothing. */
export const hasLimits = (axis: Axis, machine: Machine): boolean =>
  axis.travel !== undefined ||
  axis.soft !== undefined ||
  axis.hard !== undefined ||
  allSwitches(machine).some((each) => each.axis === axis.letter);

function verdictOf(
  axis: Axis,
  layout: AxisLayout | undefined,
  issues: readonly EnvelopeIssue[],
  offsets: WorkOffsets,
  program: ProgramExtents | undefined,
  scene: Scene,
): Verdict {
  const of = { check: 'envelope', subject: axis.letter } as const;
  if (!layout) return withoutEvidence(of, hasLimits(axis, scene.machine) ? 'stopped' : 'soft-limits-unknown');
  const findings = issues.filter((each) => each.axis === axis.letter).map(findingOf);
  const facts = { envelope: envelopeFacts(axis, layout, offsets, program, scene) };
  const evidence = evidenceOf(axis, layout, scene);
  const missing = missingOf(layout, evidence);
  if (missing && statusOf(findings) === 'proved')
    return withoutEvidence(of, missing, { evidence, findings, facts });
  return { ...of, status: statusOf(findings), evidence, findings, missing: [], facts, traces: [] };
}

/** Limits lie from machine zero: numbers that fit each other prove nothing while no homing was seen to set that zero. */
function missingOf({ soft, ends: at }: AxisLayout, evidence: EvidenceLevel): Missing | undefined {
  if (soft === undefined) return 'soft-limits-unknown';
  if (ends.every((end) => at[end].trip === undefined && at[end].stop === undefined))
    return 'switch-places-unknown';
  return evidence === 'commanded' ? undefined : 'homing-not-shown';
}

function evidenceOf(axis: Axis, { soft }: AxisLayout, scene: Scene): EvidenceLevel {
  if (Object.keys(observedOf(axis.letter, scene).trips ?? {}).length > 0) return 'commanded';
  return axis.soft === undefined && soft !== undefined ? 'told' : 'configured';
}

function findingOf({ kind, ...fact }: EnvelopeIssue): Finding {
  return { kind: limitKindOf[kind], issue: kind, ...knownOnly(fact) } as Finding;
}

/** What the program itself leaves open; where it goes too far is said of its axis. */
function programVerdict(program: ProgramExtents, isPlaced: boolean): Verdict {
  const { boxes: _, firstZ: __, ...facts } = program;
  const of = { check: 'envelope', subject: 'program' } as const;
  const rest = { evidence: 'configured', findings: [], facts: { program: facts }, traces: [] } as const;
  if (program.motions === 0) return withoutEvidence(of, 'program-without-motion', rest);
  if (program.notUnderstood.length > 0) return withoutEvidence(of, 'program-not-understood', rest);
  if (!isPlaced) return withoutEvidence(of, 'work-zero-unknown', rest);
  return { ...of, ...rest, status: 'proved', missing: [] };
}
