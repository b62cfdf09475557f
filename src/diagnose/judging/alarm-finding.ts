import type { Finding, MotionFact, MotionKind } from '../../model/finding.ts';
import type { AxisLetter } from '../../model/machine.ts';
import type { SeekAlarm } from '../seek/alarm.ts';
import type { Features } from '../seek/features.ts';
import { dangerOf } from '../seek/guard.ts';
import { motionFinding } from './motion-finding.ts';

/** What an alarm comes to once the motion is over. A beam that pushes on because its second side never answered is one out of step, not one that stops late. */
export function kindOfAlarm({ kind }: SeekAlarm, { sides }: Features): MotionKind {
  return kind === 'pushes-on' && sides === 'one' ? 'gantry' : dangerOf[kind];
}

/** The input and the length that it was raised with. */
export const factOfAlarm = (alarm: SeekAlarm): Pick<MotionFact, 'input' | 'by'> => ({
  ...('input' in alarm && { input: alarm.input }),
  ...(alarm.kind === 'pushes-on' && { by: alarm.by }),
});

/** A motion that was only watched, not judged: each alarm by itself, once a kind. */
export function alarmFindings(axis: AxisLetter, alarms: readonly SeekAlarm[]): readonly Finding[] {
  const kinds = new Map<MotionKind, Finding>();
  for (const alarm of alarms) {
    const kind = dangerOf[alarm.kind];
    if (!kinds.has(kind))
      kinds.set(kind, motionFinding(kind, { axis, candidates: [], apart: [], ...factOfAlarm(alarm) }));
  }
  return [...kinds.values()];
}
