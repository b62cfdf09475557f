import type { Finding, MotionKind } from '../../model/finding.ts';
import type { Machine } from '../../model/machine.ts';
import { sideClashes } from '../../model/side-clash.ts';
import type { EvidenceLevel, Missing, Verdict } from '../../model/verdict.ts';
import type { SeekJudgement } from '../seek/judge.ts';
import { judgeFirstSeek } from '../seek/judge-first-seek.ts';
import { turnsOneWay } from '../seek/sense.ts';
import { tellsMost } from '../seek/tells-most.ts';
import { factOfAlarm, kindOfAlarm } from './alarm-finding.ts';
import { axisTrackOf } from './axis-track.ts';
import { motionFinding } from './motion-finding.ts';
import type { SeekItem } from './seek-evidence.ts';
import { statusOf, withoutEvidence } from './status.ts';
import { wasBraking } from './was-braking.ts';

/** What the first seeks of one axis came to. */
export function judgeSeekItem(item: SeekItem, machine: Machine): Verdict {
  const of = { check: 'seek', subject: item.axis } as const;
  const tracks = tracksOf(item);
  const facts = tracks.length > 0 ? { tracks } : {};
  const judged = seekJudgement(item, machine);
  const findings = findingsOf(item, judged);
  if (item.missing && item.runs.length === 0) return withoutEvidence(of, item.missing, { facts });
  const evidence = evidenceOf(judged);
  const common = { ...of, evidence, findings, facts, traces: [] };
  const status = statusOf(findings);
  if (status === 'failed') return { ...common, status, missing: [] };
  const missing = missingOf(item, judged);
  if (missing) return { ...common, status: 'inconclusive', missing: [missing] };
  return { ...common, status, missing: [] };
}

/**
 * Where the end of the switch is known from its side and a hand has proved the switch, the file does not have it mirrored: a tool that then goes away from it
 * cannot have come to it.
 */
export function seekJudgement(
  { roles, runs, answers, alarms, mapProved }: SeekItem,
  machine: Machine,
): SeekJudgement {
  const judged = judgeFirstSeek({ roles, runs, answers, mapProved }, alarms);
  const { way, tool } = judged.features;
  const clashes = sideClashes(machine).some(
    ({ finding }) => finding.kind === 'side-clash' && finding.axis === roles.axis.letter,
  );
  if (!roles.placed || clashes || way !== 'toward' || tool !== 'opposite') return judged;
  return { ...judged, own: judged.own.filter((name) => name !== 'mirrored') };
}

function findingsOf(item: SeekItem, judged: SeekJudgement): readonly Finding[] {
  const { axis, alarms, roles } = item;
  const { own, features } = judged;
  const apart = tellsMost(judged);
  const faulty = own.filter((name) => name !== 'healthy');
  const cameToIt = features.trip === 'own';
  const alarmed = alarms
    .filter(({ kind }) => kind !== 'heads-away' || !cameToIt)
    .map(
      (alarm): Finding =>
        motionFinding(kindOfAlarm(alarm, features), {
          axis,
          candidates: faulty,
          apart,
          ...factOfAlarm(alarm),
        }),
    );
  if (turnsOneWay(item.first))
    return [motionFinding('turns-one-way', { axis, candidates: ['does-not-turn-back'], apart: [] })];
  if (item.first?.other)
    return [motionFinding('other-axis-moves', { axis, candidates: ['motors-crossed'], apart: [] })];
  const input = roles.home[0];
  const last = item.runs.at(-1);
  if (features.after === 'pushed-on' && last && !wasBraking(last))
    return [
      ...alarmed,
      { kind: 'not-acted-on', axis, candidates: [], apart: [], ...(input !== undefined && { input }) },
    ];
  if (alarmed.length > 0) return alarmed;
  if (judged.says !== 'faulty') return [];
  const kinds = new Map<MotionKind, Finding>();
  for (const { kind, situations } of judged.findings) {
    const candidates = situations.filter((name) => own.includes(name));
    if (kind === 'scale-off' || candidates.length === 0) continue;
    const stray = kind === 'wrong-switch' ? item.runs.at(-1)?.strayTrips[0]?.input : undefined;
    kinds.set(
      kind,
      motionFinding(kind, { axis, candidates, apart, ...(stray !== undefined && { input: stray }) }),
    );
  }
  return [...kinds.values()];
}

function missingOf({ runs, missing }: SeekItem, judged: SeekJudgement): Missing | undefined {
  const { says, direction, features, own } = judged;
  if (missing) return missing;
  const last = runs.at(-1);
  if (!last?.cycle.approach && features.zero !== 'set') return 'no-motion-seen';
  if (features.seen === 'gap') return last?.cycle.ends === 'gap' ? 'stream-broke-off' : 'motion-not-reported';
  if (says === 'contradictory') return 'contradictory';
  if (!direction.known) return 'direction-not-known';
  // A single trip may have been noise, unless somebody saw the axis at its switch or it came three times in one place.
  const wasThere = features.reached === 'yes' || features.trips === 'together';
  if (says === 'faulty') return undefined;
  return own.includes('healthy') && features.trip === 'own' && wasThere ? undefined : 'not-told-apart';
}

function evidenceOf({ features }: SeekJudgement): EvidenceLevel {
  if (features.place !== undefined) return 'repeated';
  if (features.trip === 'own') return 'edge';
  return features.way === undefined || features.way === 'none' ? 'told' : 'commanded';
}

function tracksOf({ roles, runs, alarms, first }: SeekItem): NonNullable<Verdict['facts']['tracks']> {
  return runs.flatMap((run) => {
    const { window, motion, rest, cycle } = run;
    const alarm = alarms.find(({ arrived }) => arrived >= window.from && arrived <= window.to);
    const track = axisTrackOf({
      axis: roles.axis,
      label: window === first?.window ? 'move' : 'seek',
      window,
      motion,
      rest,
      wanted: roles.home,
      others: [...roles.farEnd, ...roles.otherAxes, ...roles.probes, ...roles.stops],
      expected: roles.toward,
      cycle,
      alarmed: alarm?.arrived,
    });
    return track ?? [];
  });
}
