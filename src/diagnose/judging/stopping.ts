import type { Finding } from '../../model/finding.ts';
import { knownOnly } from '../../model/known-only.ts';
import type { Axis, AxisLetter } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import type { StoppingFacts } from '../../model/stopping-facts.ts';
import { type Mm, mm } from '../../model/units.ts';
import type { Verdict } from '../../model/verdict.ts';
import { axesAsked, unitOf } from '../scope/axes-asked.ts';
import { lastOf } from '../scope/last-verdict.ts';
import { seekRoles } from '../seek/roles.ts';
import { judgeStopping, type StopJudgement } from '../stopping/judge.ts';
import { factsOf } from './observed-limits.ts';
import { statusOf, withoutEvidence } from './status.ts';

/** What was told about the room behind a trip. */
export interface StoppingItem {
  readonly axis: AxisLetter;
  readonly overtravel: Mm | undefined;
  readonly toHardStop: Mm | undefined;
}

export function judgeStops(items: readonly StoppingItem[], scene: Scene): readonly Verdict[] {
  const { machine, known } = scene;
  return axesAsked(scene)
    .filter(({ letter }) => (seekRoles(machine, letter, known.answering)?.home.length ?? 0) > 0)
    .map((axis) => {
      const item = items.find((each) => each.axis === axis.letter);
      return item
        ? verdictOf(axis, item, scene)
        : withoutEvidence({ check: 'stopping', subject: axis.letter }, 'stopped');
    });
}

function verdictOf(axis: Axis, { overtravel, toHardStop }: StoppingItem, scene: Scene): Verdict {
  const of = { check: 'stopping', subject: axis.letter } as const;
  const seen = (['homing', 'seek'] as const).flatMap((check) => {
    const homing = factsOf(check, axis.letter, scene)?.homing;
    return homing?.stopDistance ? [homing] : [];
  });
  // What the stream showed of the speed is nearer to the truth than what the file says.
  const speed = seen[0]?.approachSpeed?.value ?? perSecond(axis.approachSpeed);
  // Where the file does not tell how it brakes, the slowest ramp that its homing can have had.
  const acceleration = axis.acceleration ?? seen[0]?.acceleration?.low;
  const approach = knownOnly({ speed, acceleration, reaction: axis.reaction });
  const judged = judgeStopping({
    approach,
    observed: seen.flatMap(({ stopDistance }) => stopDistance ?? []),
    overtravel,
    toHardStop,
  });
  const facts = { stopping: factsFrom(axis, approach, judged, seen.length, overtravel, toHardStop) };
  const evidence = judged.observed ? 'commanded' : 'configured';
  const over = judged.says === 'overruns' ? judged.over : undefined;
  const findings: readonly Finding[] =
    over !== undefined || hasOverrun(axis.letter, scene)
      ? [{ kind: 'overruns', axis: axis.letter, candidates: [], apart: [], ...knownOnly({ by: over }) }]
      : [];
  if (findings.length === 0 && judged.says !== 'unknown' && !judged.observed)
    return withoutEvidence(of, 'stop-not-seen', { evidence, facts });
  if (findings.length === 0 && judged.says === 'unknown') {
    const nothing = judged.computed === undefined && judged.observed === undefined;
    const missing = nothing ? 'speeds-unknown' : judged.room ? 'too-coarse' : 'room-unknown';
    return withoutEvidence(of, missing, { evidence, facts });
  }
  return { ...of, status: statusOf(findings), evidence, findings, missing: [], facts, traces: [] };
}

/** It was seen to push on past its trip in this session, whatever the numbers of the file make of it. */
const hasOverrun = (axis: AxisLetter, scene: Scene): boolean =>
  (['seek', 'homing'] as const).some((check) =>
    lastOf(check, axis, scene)?.findings.some(({ kind }) => kind === 'overruns'),
  );

const perSecond = (perMinute: number | undefined): number | undefined =>
  perMinute === undefined ? undefined : perMinute / 60;

const factsFrom = (
  axis: Axis,
  approach: Pick<StoppingFacts, 'speed' | 'acceleration' | 'reaction'>,
  judged: StopJudgement,
  stops: number,
  overtravel: Mm | undefined,
  toHardStop: Mm | undefined,
): StoppingFacts =>
  knownOnly({
    axis: axis.letter,
    unit: unitOf(axis),
    ...approach,
    computed: judged.computed,
    observed: judged.observed && { low: mm(judged.observed.low), high: mm(judged.observed.high) },
    stops,
    worseThanDeclared: judged.worseThanDeclared,
    overtravel,
    toHardStop,
    room: judged.room,
    says: judged.says,
    over: judged.over,
    fastest: judged.fastest,
    halved: judged.halved,
  });
