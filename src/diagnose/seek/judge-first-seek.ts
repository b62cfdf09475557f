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
  'gantry-offset-moved',
  'gantry-motors-fight',
  'rotary-either-side',
  'wrong-order',
  'overruns',
  'loses-steps',
];

/** Where no trip came before it was stopped, these had not happened. */
const afterTrips: readonly SituationName[] = ['noise-trip', 'trip-between-reports'];

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
  // It is asked for at the lowest speed there is.
  if (slow >= crawlSpeed && features.speed !== undefined) features = { ...features, speed: 'as-declared' };
  const isCutShort = wasCutShort(features, alarms);
  if (isCutShort) features = without(features, 'trip', 'zero', 'reached', 'lengths', 'ends');
  if (isHoming && features.after === 'reversed') return judgeFeatures(features, roles);
  if (features.after === 'stopped') features = without(features, 'after', 'clear');
  const others = isCutShort ? [...homingsBusiness, ...afterTrips] : homingsBusiness;
  return judgeFeatures(without(features, 'slow', 'zero', 'ends'), roles, others);
}

/** A stop ended it before it came to any switch. */
const wasCutShort = ({ trip, endedBy }: Features, alarms: readonly SeekAlarm[]): boolean =>
  trip === 'none' && (endedBy === 'stop-button' || alarms.length > 0);

function without(features: Features, ...names: readonly (keyof Features)[]): Features {
  return Object.fromEntries(
    Object.entries(features).filter(([name]) => !names.some((each) => each === name)),
  ) as Features;
}
