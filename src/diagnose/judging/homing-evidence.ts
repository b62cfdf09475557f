import type { AxisLetter } from '../../model/machine.ts';
import type { Missing } from '../../model/verdict.ts';
import type { OrderIssue } from '../homing/order.ts';
import type { SeekAlarm } from '../seek/alarm.ts';
import type { SeekAnswers } from '../seek/observe.ts';
import type { SeekRoles } from '../seek/roles.ts';
import type { SeekRun } from '../seek/run.ts';

/** Everything gathered of the homings of one axis. */
export interface HomingItem {
  readonly axis: AxisLetter;
  readonly roles: SeekRoles;
  readonly missing?: Missing;
  /** Oldest first; where all homed together each axis has its own. */
  readonly runs: readonly SeekRun[];
  readonly answers: SeekAnswers;
  readonly alarms: readonly SeekAlarm[];
  readonly mapProved: boolean;
  /** After one homing and before the next the controller restarted, fell into a fault or was stopped. */
  readonly lostSince: boolean;
  /** The axes in the order in which they set off, where several homed together. */
  readonly order?: readonly AxisLetter[];
  readonly orderIssues: readonly OrderIssue[];
}

/** Of an axis that was not homed yet. */
export const nothingOf = (axis: AxisLetter, roles: SeekRoles, missing?: Missing): HomingItem => ({
  axis,
  roles,
  runs: [],
  answers: {},
  alarms: [],
  mapProved: false,
  lostSince: false,
  orderIssues: [],
  ...(missing && { missing }),
});
