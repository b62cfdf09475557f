import type { Finding } from '../../model/finding.ts';
import { limitKindOf } from '../../model/limits-finding.ts';
import type { Axis, AxisLetter } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import { told } from '../../model/told.ts';
import type { Mm } from '../../model/units.ts';
import type { Verdict } from '../../model/verdict.ts';
import { envelopeIssues } from '../envelope/conditions.ts';
import { envelopeFacts } from '../envelope/facts.ts';
import type { EnvelopeIssue } from '../envelope/issue.ts';
import { type AxisLayout, ends, layoutOf } from '../envelope/layout.ts';
import { offsetIssues } from '../envelope/offset-issues.ts';
import { untold, type WorkOffsets, type WorkSystem, workSystems } from '../envelope/offsets.ts';
import { partIssues } from '../envelope/part-box.ts';
import { type ProgramExtents, readProgram } from '../envelope/program/read.ts';
import { axesAsked } from '../procedures/axes-asked.ts';
import { observedOf } from './observed-limits.ts';
import { statusOf, withoutEvidence } from './status.ts';

/** What was told about one axis beside the file. */
export interface EnvelopeEvidence {
  readonly axis: AxisLetter;
  readonly soft: readonly [Mm, Mm] | undefined;
  readonly origins: Readonly<Partial<Record<WorkSystem, Mm>>>;
}

/** One verdict an axis, and one about the program where one was given. */
export function judgeEnvelope(items: readonly EnvelopeEvidence[], scene: Scene): readonly Verdict[] {
  const program = scene.program === undefined ? undefined : readProgram(scene.program);
  const offsets = offsetsOf(items);
  const layouts = items.flatMap((item) => {
    const axis = scene.machine.axes.find(({ letter }) => letter === item.axis);
    return axis ? [layoutOf({ ...axis, soft: item.soft }, observedOf(item.axis, scene))] : [];
  });
  const told = new Set(
    items.filter(({ origins }) => Object.keys(origins).length > 0).map(({ axis }) => axis),
  );
  const issues = [
    ...layouts.flatMap(envelopeIssues),
    ...(program ? aboutProgram(program, layouts, offsets, told) : []),
  ];
  const axes = axesAsked(scene).map((axis) =>
    verdictOf(
      axis,
      layouts.find(({ letter }) => letter === axis.letter),
      issues,
      offsets,
      program,
      scene,
    ),
  );
  return program ? [...axes, programVerdict(program)] : axes;
}

/** An axis whose work zero nobody told cannot be judged against the program. */
function aboutProgram(
  program: ProgramExtents,
  layouts: readonly AxisLayout[],
  offsets: WorkOffsets,
  told: ReadonlySet<AxisLetter>,
): readonly EnvelopeIssue[] {
  const known = layouts.filter(({ letter }) => told.has(letter));
  const inMachine = { ...program, boxes: program.boxes.filter(({ system }) => system === 'machine') };
  return [
    ...partIssues(program, known, offsets),
    ...partIssues(
      { ...inMachine, firstZ: undefined },
      layouts.filter((each) => !known.includes(each)),
      offsets,
    ),
    ...(told.size > 0 ? offsetIssues(offsets, known, program) : []),
  ];
}

function offsetsOf(items: readonly EnvelopeEvidence[]): WorkOffsets {
  const origins = Object.fromEntries(
    workSystems.flatMap((system) => {
      const axes = items.flatMap((item) => {
        const at = item.origins[system];
        return at === undefined ? [] : [[item.axis, at] as const];
      });
      return axes.length === 0 ? [] : [[system, Object.fromEntries(axes)]];
    }),
  );
  return { ...untold, origins };
}

function verdictOf(
  axis: Axis,
  layout: AxisLayout | undefined,
  issues: readonly EnvelopeIssue[],
  offsets: WorkOffsets,
  program: ProgramExtents | undefined,
  scene: Scene,
): Verdict {
  const of = { check: 'envelope', subject: axis.letter } as const;
  if (!layout) return withoutEvidence(of, 'stopped');
  const findings = issues.filter((each) => each.axis === axis.letter).map(findingOf);
  const facts = { envelope: envelopeFacts(axis, layout, offsets, program, scene) };
  const evidence = evidenceOf(axis, layout, scene);
  const missing =
    layout.soft === undefined
      ? 'soft-limits-unknown'
      : ends.every((end) => layout.ends[end].trip === undefined && layout.ends[end].stop === undefined)
        ? 'switch-places-unknown'
        : undefined;
  if (missing && statusOf(findings) === 'proved')
    return withoutEvidence(of, missing, { evidence, findings, facts });
  return { ...of, status: statusOf(findings), evidence, findings, missing: [], facts, traces: [] };
}

function evidenceOf(axis: Axis, { soft }: AxisLayout, scene: Scene): Verdict['evidence'] {
  if (Object.keys(observedOf(axis.letter, scene).trips ?? {}).length > 0) return 'commanded';
  return axis.soft === undefined && soft !== undefined ? 'told' : 'configured';
}

function findingOf({ kind, ...fact }: EnvelopeIssue): Finding {
  return { kind: limitKindOf[kind], issue: kind, ...told(fact) } as Finding;
}

/** What the program itself leaves open; where it goes too far is said of its axis. */
function programVerdict(program: ProgramExtents): Verdict {
  const { boxes: _, firstZ: __, ...facts } = program;
  const of = { check: 'envelope', subject: 'program' } as const;
  const rest = { evidence: 'configured', findings: [], facts: { program: facts }, traces: [] } as const;
  if (program.motions === 0) return withoutEvidence(of, 'program-without-motion', rest);
  if (program.notUnderstood.length > 0) return withoutEvidence(of, 'program-not-understood', rest);
  return { ...of, ...rest, status: 'proved', missing: [] };
}
