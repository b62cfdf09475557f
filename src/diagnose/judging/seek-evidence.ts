import type { AxisLetter } from '../../model/machine.ts';
import type { FirstMove } from '../../model/procedure.ts';
import type { Missing } from '../../model/verdict.ts';
import type { SeekAlarm } from '../seek/alarm.ts';
import type { SeekAnswers } from '../seek/observe.ts';
import type { SeekRoles } from '../seek/roles.ts';
import type { SeekRun } from '../seek/run.ts';

/** Everything gathered of the first seeks of one axis. */
export interface SeekItem {
  readonly axis: AxisLetter;
  readonly roles: SeekRoles;
  readonly missing?: Missing;
  readonly first?: FirstMove | undefined;
  /** Oldest first. */
  readonly runs: readonly SeekRun[];
  readonly answers: SeekAnswers;
  readonly alarms: readonly SeekAlarm[];
  /** Every home input answered its own switch when pressed. */
  readonly mapProved: boolean;
}
