import type { SeekAlarm } from './alarm.ts';
import type { Features } from './features.ts';
import { judgeFeatures, type SeekJudgement } from './judge.ts';
import { crawlSpeed } from './limits.ts';
import { observe, type SeekEvidence } from './observe.ts';
import type { SituationName } from './situations/situation.ts';

/** What a run to the switch alone cannot show: it is the business of the homing. */
const homingsBusiness: readonly SituationName[] = [
  'no-reversal',
  'does-not-turn-back',
  'does-not-clear',
  'trip-lost-to-bounce',
  'zero-not-set',
  'wrong-order',
  'overruns',
  'loses-steps',
  'switch-wanders',
];

/** Where no trip came before it was stopped, these had not happened. */
const afterTrips: readonly SituationName[] = [
  'noise-trip',
  'trip-between-reports',
  'inputs-crossed',
  'motors-crossed',
];

/**
 * The first seeks of an axis. One by hand ends on the switch and sets nothing, and is no worse for it; one that was stopped, by the button or after an alarm, was cut short, and
 * what it did not come to says nothing.
 */
export function judgeFirstSeek(evidence: SeekEvidence, alarms: readonly SeekAlarm[]): SeekJudgement {
  const { runs, roles } = evidence;
  const last = runs.at(-1);
  const isHoming =
    last !== undefined &&
    (last.cycle.zero.kind === 'jump' ||
      last.window.readings.some((each) => each.kind === 'status' && each.activity === 'homing'));
  let features = observe(evidence);
  const slow = Math.abs(last?.cycle.approach?.speed?.value ?? 0);
  // It is asked for at the lowest speed there is; but not so low that it does not come to an end.
  if (slow >= crawlSpeed && features.speed !== undefined && features.ends !== 'moving')
    features = { ...features, speed: 'as-declared' };
  const isCutShort = wasCutShort(features, alarms);
  if (isCutShort) features = without(features, 'trip', 'zero', 'reached', 'lengths', 'ends');
  if (isHoming && features.after === 'reversed') return judgeFeatures(features, roles);
  if (features.after === 'stopped') features = without(features, 'after', 'clear');
  const others = [
    ...homingsBusiness,
    ...sidesBusiness(features),
    ...(features.way === 'away' ? [] : (['rotary-either-side'] as const)),
    ...(isCutShort ? afterTrips : []),
    ...(features.zero === 'set' ? [] : (['zeroed-in-place'] as const)),
  ];
  const ends = features.trip === 'none' && features.ends === 'moving' ? [] : (['ends'] as const);
  return judgeFeatures(without(features, 'slow', 'zero', ...ends), roles, others);
}

/** A beam that stops at the first of its switches has shown nothing of the second; only one that was seen out of square has shown more. */
const sidesBusiness = ({ sides, racked }: Features): readonly SituationName[] => [
  ...(sides === 'one' ? [] : (['gantry-sides-crossed', 'gantry-switch-dead'] as const)),
  ...(racked === 'yes' ? [] : (['gantry-offset-moved'] as const)),
];

/** A stop ended it before it came to any switch. */
const wasCutShort = ({ trip, endedBy }: Features, alarms: readonly SeekAlarm[]): boolean =>
  trip === 'none' && (endedBy === 'stop-button' || alarms.length > 0);

function without(features: Features, ...names: readonly (keyof Features)[]): Features {
  return Object.fromEntries(
    Object.entries(features).filter(([name]) => !names.some((each) => each === name)),
  ) as Features;
}
