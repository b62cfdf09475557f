import type { Finding } from '../../model/finding.ts';
import { knownOnly } from '../../model/known-only.ts';
import type { Axis, AxisLetter } from '../../model/machine.ts';
import type { MotionKnown, Scene } from '../../model/procedure.ts';
import type { ScaleFacts } from '../../model/scale-facts.ts';
import type { Missing, Verdict } from '../../model/verdict.ts';
import { calliperError, scaleAccepted } from '../limits.ts';
import type { ScaleRun } from '../scale/fit.ts';
import { judgeScale, type ScaleJudgement } from '../scale/judge.ts';
import { axesAsked } from '../scope/axes-asked.ts';
import { referenceLost } from './motion-finding.ts';
import { statusOf, withoutEvidence } from './status.ts';

export interface ScaleItem {
  readonly axis: AxisLetter;
  readonly runs: readonly ScaleRun[];
  readonly motion: MotionKnown;
  /** The zero of the homing was lost on the way. */
  readonly lost: boolean;
  readonly missing?: Missing;
}

export function judgeLengths(items: readonly ScaleItem[], scene: Scene): readonly Verdict[] {
  return axesAsked(scene)
    .filter(({ kind }) => kind === 'linear')
    .map((axis) => {
      const item = items.find((each) => each.axis === axis.letter);
      return item
        ? verdictOf(axis, item)
        : withoutEvidence({ check: 'scale', subject: axis.letter }, 'stopped');
    });
}

function verdictOf(axis: Axis, { runs, lost, missing }: ScaleItem): Verdict {
  const of = { check: 'scale', subject: axis.letter } as const;
  const stepsPerUnit = axis.step === undefined ? undefined : 1 / axis.step;
  const judged = judgeScale({ runs, stepsPerUnit, readingError: calliperError, accepted: scaleAccepted });
  const noZero: readonly Finding[] = lost ? [referenceLost(axis.letter)] : [];
  if (!judged) return withoutEvidence(of, missing ?? 'lengths-missing', { findings: noZero });
  const facts = { scale: factsOf(axis, runs, judged, stepsPerUnit) };
  const findings = [...findingsOf(axis.letter, judged, stepsPerUnit), ...noZero];
  const rest = { evidence: 'measured', findings, facts, traces: [] } as const;
  if (judged.says === 'too-coarse' && statusOf(findings) === 'proved')
    return withoutEvidence(of, missing ?? 'too-coarse', rest);
  return { ...of, ...rest, status: statusOf(findings), missing: missing ? [missing] : [] };
}

function findingsOf(
  axis: AxisLetter,
  { says, fit, causes, correctedSteps, hasBacklash, waysDiffer }: ScaleJudgement,
  steps: number | undefined,
): readonly Finding[] {
  const off: Finding = knownOnly({
    kind: 'scale-off',
    axis,
    ratio: fit.ratio,
    cause: causes[0]?.cause,
    steps,
    corrected: correctedSteps,
  });
  const lost: readonly Finding[] =
    hasBacklash && fit.backlash !== undefined ? [{ kind: 'backlash', axis, by: fit.backlash }] : [];
  const differ: readonly Finding[] =
    waysDiffer && fit.byWay ? [{ kind: 'ways-differ', axis, ...fit.byWay }] : [];
  return [...(says === 'off' ? [off] : []), ...lost, ...differ];
}

const factsOf = (
  axis: Axis,
  runs: readonly ScaleRun[],
  { fit, ...judged }: ScaleJudgement,
  steps: number | undefined,
): ScaleFacts =>
  knownOnly({
    axis: axis.letter,
    unit: 'mm',
    runs,
    ratio: fit.ratio,
    doubt: judged.doubt,
    accepted: scaleAccepted,
    offset: fit.offset,
    backlash: fit.backlash,
    hasBacklash: judged.hasBacklash,
    byWay: fit.byWay,
    waysDiffer: judged.waysDiffer,
    worst: fit.worst,
    says: judged.says,
    causes: judged.causes.map(({ cause }) => cause),
    steps,
    correctedSteps: judged.correctedSteps,
  });
