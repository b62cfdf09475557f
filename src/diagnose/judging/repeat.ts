import type { Finding } from '../../model/finding.ts';
import type { AxisLetter } from '../../model/machine.ts';
import type { MotionKnown, Scene } from '../../model/procedure.ts';
import type { RepeatFacts } from '../../model/repeat-facts.ts';
import { told } from '../../model/told.ts';
import { type Millis, type Mm, mm } from '../../model/units.ts';
import type { Missing, Verdict } from '../../model/verdict.ts';
import type { HomingCycle } from '../homing/cycle.ts';
import { repeatTolerance } from '../limits.ts';
import { axesAsked } from '../procedures/axes-asked.ts';
import { judgeRepeatability, type Repeatability } from '../repeatability/judge.ts';
import { placedCycles } from '../repeatability/places.ts';
import { seekRoles } from '../seek/roles.ts';
import { statusOf, withoutEvidence } from './status.ts';

/** One homing among many: what the stream showed, where it began, and what a gauge read. */
export interface RepeatedHoming {
  readonly cycle: HomingCycle;
  readonly start: Mm;
  readonly gauge?: Mm;
  readonly period?: Millis;
}

export interface RepeatItem {
  readonly axis: AxisLetter;
  readonly homings: readonly RepeatedHoming[];
  readonly motion: MotionKnown;
  readonly missing?: Missing;
}

export function judgeRepeat(items: readonly RepeatItem[], scene: Scene): readonly Verdict[] {
  const { machine, known } = scene;
  return axesAsked(scene)
    .filter(({ letter }) => (seekRoles(machine, letter, known.answering)?.home.length ?? 0) > 0)
    .map(({ letter, kind }) => {
      const of = { check: 'repeat', subject: letter } as const;
      const item = items.find(({ axis }) => axis === letter);
      return item ? verdictOf(item, kind === 'rotary' ? 'degrees' : 'mm') : withoutEvidence(of, 'stopped');
    });
}

function verdictOf({ axis, homings, missing }: RepeatItem, unit: RepeatFacts['unit']): Verdict {
  const of = { check: 'repeat', subject: axis } as const;
  const placed = placedCycles(homings.map(({ cycle }) => cycle));
  const runs = placed.flatMap(({ cycle, place }) => {
    const homing = homings.find((each) => each.cycle === cycle);
    return homing ? [{ place, ...told({ gauge: homing.gauge, start: homing.start }) }] : [];
  });
  const judged = judgeRepeatability(runs, repeatTolerance);
  if (!judged) return withoutEvidence(of, missing ?? 'too-few-runs');
  const facts = { repeat: factsOf(axis, unit, judged, runs, homings[0]?.period) };
  const evidence = judged.source === 'measured' ? 'measured' : runs.length >= 3 ? 'repeated' : 'commanded';
  const rest = { evidence, findings: [], facts, traces: [] } as const;
  if (judged.says === 'too-few') return withoutEvidence(of, missing ?? 'too-few-runs', rest);
  if (judged.says === 'too-coarse') return withoutEvidence(of, 'too-coarse', rest);
  const findings: readonly Finding[] =
    judged.says === 'beyond'
      ? [{ kind: 'scattered-trips', axis, candidates: [], apart: [], by: mm(judged.figures.range) }]
      : [];
  return { ...of, ...rest, findings, status: statusOf(findings), missing: missing ? [missing] : [] };
}

function factsOf(
  axis: AxisLetter,
  unit: RepeatFacts['unit'],
  judged: Repeatability,
  runs: RepeatFacts['runs'],
  period: Millis | undefined,
): RepeatFacts {
  const { figures, outlier, drift } = judged;
  return told({
    axis,
    unit,
    source: judged.source,
    n: figures.n,
    mean: figures.mean,
    s: figures.s,
    range: figures.range,
    unidirectional: judged.unidirectional,
    definition: judged.definition,
    deviation95: judged.deviation95,
    outlier: outlier && { index: outlier.index, value: outlier.value },
    drift: drift && { slope: drift.slope },
    startPoints: judged.startPoints,
    blur: judged.blur,
    period,
    tolerance: repeatTolerance,
    says: judged.says,
    runs,
  });
}
