import type { Finding, MotionKind } from '../../model/finding.ts';
import { type HomingFacts, type HomingPart, homingParts } from '../../model/homing-facts.ts';
import { knownOnly } from '../../model/known-only.ts';
import { mm } from '../../model/units.ts';
import type { Facts, Missing, Verdict } from '../../model/verdict.ts';
import { judgeHoming } from '../homing/judge.ts';
import { reactionOf } from '../homing/reaction.ts';
import { squarenessError } from '../homing/side-offset.ts';
import { judgeSeek, type SeekJudgement } from '../seek/judge.ts';
import { grantedPast } from '../seek/observe-run.ts';
import type { SeekRun } from '../seek/run.ts';
import { tellsMost } from '../seek/tells-most.ts';
import { factOfAlarm, kindOfAlarm } from './alarm-finding.ts';
import { axisTrackOf } from './axis-track.ts';
import type { HomingItem } from './homing-evidence.ts';
import { motionFinding } from './motion-finding.ts';
import { statusOf, withoutEvidence } from './status.ts';
import { wasBraking } from './was-braking.ts';

/** What the homings of one axis came to: the figures of the last one, and what all of them show. */
export function judgeHomingItem(item: HomingItem): Verdict {
  const of = { check: 'homing', subject: item.axis } as const;
  const last = item.runs.at(-1);
  if (!last) return withoutEvidence(of, item.missing ?? 'stopped');
  const judged = judgeSeek({
    roles: item.roles,
    runs: item.runs,
    mapProved: item.mapProved,
    answers: item.answers,
    orderWrong: item.orderIssues.length > 0,
    lostSince: item.lostSince,
  });
  const findings = findingsOf(item, last, judged);
  const status = statusOf(findings);
  const facts = factsOf(item, last);
  const trips = item.runs.filter(({ cycle }) => cycle.trip).length;
  const evidence = trips >= 3 ? 'repeated' : trips > 0 ? 'edge' : 'commanded';
  const common = { ...of, evidence, findings, facts, traces: [] } as const;
  if (status === 'failed') return { ...common, status, missing: [] };
  const missing = missingOf(item, last, judged);
  if (missing) return { ...common, status: 'inconclusive', missing: [missing] };
  return { ...common, status, missing: [] };
}

function findingsOf(item: HomingItem, last: SeekRun, judged: SeekJudgement): readonly Finding[] {
  const { cycle } = last;
  const { axis, alarms, roles } = item;
  const { own, features } = judged;
  const apart = tellsMost(judged);
  const faulty = own.filter((name) => name !== 'healthy');
  const kinds = new Map<MotionKind, Finding>();
  const add = (kind: MotionKind, fact: Partial<Parameters<typeof motionFinding>[1]>) => {
    if (!kinds.has(kind)) kinds.set(kind, motionFinding(kind, { axis, candidates: [], apart: [], ...fact }));
  };
  for (const alarm of alarms.filter(({ kind }) => kind !== 'heads-away' || features.trip !== 'own'))
    add(kindOfAlarm(alarm, features), {
      // Stopped by hand it had no time to turn back.
      candidates: faulty.filter((name) => alarm.kind !== 'pushes-on' || name !== 'no-reversal'),
      apart,
      ...factOfAlarm(alarm),
    });
  if (reaction(item, last) === 'not-acted-on') add('not-acted-on', { input: cycle.input });
  else if (judged.says === 'faulty' && features.seen !== 'gap')
    for (const { kind, situations } of judged.findings)
      if (kind !== 'scale-off' && !(kinds.size > 0 && (kind === 'no-trip' || kind === 'no-reversal')))
        add(kind, { candidates: situations, apart });
  for (const { kind } of judgeHoming(cycle, roles.overtravel).issues)
    if (kind === 'slow-not-slower' || (kind === 'ends-in-fault' && kinds.size === 0)) add(kind, {});
  return [...kinds.values()];
}

function missingOf({ missing }: HomingItem, { cycle }: SeekRun, judged: SeekJudgement): Missing | undefined {
  const { features, own, says } = judged;
  if (features.seen === 'gap') return cycle.ends === 'gap' ? 'stream-broke-off' : 'motion-not-reported';
  if (says === 'contradictory') return 'contradictory';
  if (!cycle.approach && cycle.zero.kind !== 'jump') return missing ?? 'no-motion-seen';
  if (says === 'faulty') return undefined;
  const wasThere = features.reached !== 'no';
  return own.includes('healthy') && cycle.trip && wasThere ? undefined : 'not-told-apart';
}

function reaction({ roles }: HomingItem, run: SeekRun): HomingFacts['reaction'] {
  const told = reactionOf(run.cycle, grantedPast(run, roles));
  // One that brakes has heeded its switch, late.
  return told === 'not-acted-on' && wasBraking(run) ? 'acted' : told;
}

function factsOf(item: HomingItem, run: SeekRun): Facts {
  const { cycle } = run;
  const { figures } = judgeHoming(cycle, item.roles.overtravel);
  const seen: Readonly<Record<HomingPart, unknown>> = {
    'off the switch': cycle.freed,
    approach: cycle.approach,
    trip: cycle.trip,
    stop: cycle.trip && cycle.stop,
    'back-off': cycle.backOff,
    clear: cycle.clear,
    'slow approach': cycle.slowApproach,
    'slow trip': cycle.slowTrip,
    release: cycle.release,
    'slow clear': cycle.slowClear,
    'zero set': cycle.zero.kind === 'jump' ? cycle.zero : undefined,
  };
  const homing: HomingFacts = {
    axis: item.axis,
    unit: item.roles.axis.kind === 'rotary' ? 'degrees' : 'mm',
    input: cycle.input,
    cycles: item.runs.length,
    seen: homingParts.filter((part) => seen[part] !== undefined),
    ...knownOnly({
      ...figures,
      sideOffset: run.sideOffset,
      squareness: run.sideOffset && squarenessError(run.sideOffset, metre),
    }),
    zero: cycle.zero.kind,
    reaction: reaction(item, run),
    ...(item.order && { order: item.order }),
  };
  const tracks = item.runs.slice(-1).flatMap((run) => trackOf(item, run) ?? []);
  return { homing, ...(tracks.length > 0 && { tracks }) };
}

const metre = mm(1000);

function trackOf({ roles, alarms }: HomingItem, { window, motion, rest, cycle }: SeekRun) {
  return axisTrackOf({
    axis: roles.axis,
    label: 'homing',
    window,
    motion,
    rest,
    wanted: roles.home,
    others: [...roles.farEnd, ...roles.probes, ...roles.stops],
    expected: roles.toward,
    cycle,
    alarmed: alarms.find(({ arrived }) => arrived >= window.from && arrived <= window.to)?.arrived,
  });
}
