import type { Finding } from '../../model/finding.ts';
import { knownOnly } from '../../model/known-only.ts';
import type { AxisLetter } from '../../model/machine.ts';
import type { MotionKnown, Scene } from '../../model/procedure.ts';
import type { RepeatFacts } from '../../model/repeat-facts.ts';
import type { SituationName } from '../../model/seek-situations.ts';
import { type Millis, type Mm, mm, ms } from '../../model/units.ts';
import type { Missing, Verdict } from '../../model/verdict.ts';
import type { HomingCycle } from '../homing/cycle.ts';
import { repeatTolerance } from '../limits.ts';
import type { Interval } from '../motion/interval.ts';
import { judgeRepeatability, periodFor, type Repeatability } from '../repeatability/judge.ts';
import { placedCycles } from '../repeatability/places.ts';
import { axesAsked } from '../scope/axes-asked.ts';
import type { SeekAlarm } from '../seek/alarm.ts';
import { seekRoles } from '../seek/roles.ts';
import { alarmFindings } from './alarm-finding.ts';
import { referenceLost } from './motion-finding.ts';
import { statusOf, withoutEvidence } from './status.ts';

/** One homing among many: what the stream showed, where it began, and what a gauge read. */
export interface RepeatedHoming {
  readonly cycle: HomingCycle;
  /** Where its trip that counts was, in its own frame. */
  readonly place: Interval<Mm> | undefined;
  /** How far from home it began, by its own count. */
  readonly start: Mm | undefined;
  readonly gauge: Mm | undefined;
  readonly period?: Millis;
}

export interface RepeatItem {
  readonly axis: AxisLetter;
  readonly homings: readonly RepeatedHoming[];
  readonly motion: MotionKnown;
  readonly alarms: readonly SeekAlarm[];
  /** The controller restarted between two homings. */
  readonly lost: boolean;
  readonly missing?: Missing;
}

export function judgeRepeat(items: readonly RepeatItem[], scene: Scene): readonly Verdict[] {
  const { machine, known } = scene;
  return axesAsked(scene)
    .filter(({ letter }) => (seekRoles(machine, letter, known.answering)?.home.length ?? 0) > 0)
    .map(({ letter, kind, step = mm(0) }) => {
      const of = { check: 'repeat', subject: letter } as const;
      const item = items.find(({ axis }) => axis === letter);
      return item
        ? verdictOf(item, kind === 'rotary' ? 'degrees' : 'mm', step)
        : withoutEvidence(of, 'stopped');
    });
}

function verdictOf(item: RepeatItem, unit: RepeatFacts['unit'], step: Mm): Verdict {
  const { axis, homings, missing } = item;
  const of = { check: 'repeat', subject: axis } as const;
  const runs = placedCycles(homings).map(({ of: { gauge, start }, place }) => ({
    place,
    ...knownOnly({ gauge, start }),
  }));
  const judged = judgeRepeatability(runs, repeatTolerance);
  const findings = findingsOf(item, judged);
  const status = statusOf(findings);
  if (!judged) return withFindings(of, findings, missing ?? 'too-few-runs');
  const facts = { repeat: factsOf(item, unit, judged, runs, step) };
  const evidence = judged.source === 'measured' ? 'measured' : runs.length >= 3 ? 'repeated' : 'commanded';
  const rest = { evidence, facts } as const;
  if (status === 'failed') return { ...of, ...rest, status, findings, missing: [], traces: [] };
  if (judged.says === 'too-few') return withFindings(of, findings, missing ?? 'too-few-runs', rest);
  if (judged.says === 'too-coarse') return withFindings(of, findings, 'too-coarse', rest);
  return { ...of, ...rest, findings, status, missing: missing ? [missing] : [], traces: [] };
}

/** What was found stands, though the rest of the evidence is missing. */
const withFindings = (
  of: Pick<Verdict, 'check' | 'subject'>,
  findings: readonly Finding[],
  missing: Missing,
  rest: Pick<Partial<Verdict>, 'evidence' | 'facts'> = {},
): Verdict => {
  const without = withoutEvidence(of, missing, { ...rest, findings });
  return statusOf(findings) === 'failed' ? { ...without, status: 'failed', missing: [] } : without;
};

/** A gauge that reads the same while the count wanders shows lost steps; one that wanders too shows a switch or a dog that does. */
function findingsOf(
  { axis, alarms, lost }: RepeatItem,
  judged: Repeatability | undefined,
): readonly Finding[] {
  const scattered = (candidates: readonly SituationName[], by: Mm): Finding => ({
    kind: 'scattered-trips',
    axis,
    candidates,
    apart: candidates.length > 1 ? ['gauge'] : [],
    by,
  });
  const isBeyond = judged?.says === 'beyond';
  const isMeasured = judged?.source === 'measured';
  return [
    ...alarmFindings(axis, alarms),
    ...(isBeyond
      ? [
          scattered(
            isMeasured ? ['switch-wanders'] : ['loses-steps', 'switch-wanders'],
            mm(judged.figures.range),
          ),
        ]
      : []),
    ...(judged?.countWanders !== undefined && !isBeyond
      ? [scattered(['loses-steps'], judged.countWanders)]
      : []),
    ...(lost ? [referenceLost(axis)] : []),
  ];
}

/** The slowest report period from which the tolerance could be told at the speed that tripped; undefined where no speed was seen, or its step alone is too coarse. */
function periodNeeded(homings: readonly RepeatedHoming[], step: Mm): Millis | undefined {
  const [first] = homings;
  const speed = (first?.cycle.slowApproach ?? first?.cycle.approach)?.speed?.value;
  const period = speed === undefined ? 0 : periodFor(repeatTolerance, speed, step);
  return period >= 1 && Number.isFinite(period) ? ms(Math.floor(period)) : undefined;
}

function factsOf(
  { axis, homings }: RepeatItem,
  unit: RepeatFacts['unit'],
  judged: Repeatability,
  runs: RepeatFacts['runs'],
  step: Mm,
): RepeatFacts {
  const { figures, outlier, drift } = judged;
  return knownOnly({
    axis,
    unit,
    source: judged.source,
    n: figures.n,
    mean: figures.mean,
    s: figures.s,
    range: figures.range,
    unidirectional: judged.unidirectional,
    definition: judged.definition,
    unbiased: judged.unbiased,
    mean95: judged.mean95,
    lagOne: judged.lagOne,
    deviation95: judged.deviation95,
    outlier: outlier && { index: outlier.index, value: outlier.value },
    drift: drift && { slope: drift.slope },
    startPoints: judged.startPoints,
    blur: judged.blur,
    period: homings[0]?.period,
    periodNeeded: judged.says === 'too-coarse' ? periodNeeded(homings, step) : undefined,
    countWanders: judged.countWanders,
    tolerance: repeatTolerance,
    says: judged.says,
    runs,
  });
}
