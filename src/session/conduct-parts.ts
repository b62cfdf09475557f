import type { Machine } from '../model/machine.ts';
import type { Verdict } from '../model/verdict.ts';
import type { Course } from './course.ts';
import type { Face } from './operator.ts';
import type { Recorder } from './recorder.ts';
import type { Retraced } from './retrace.ts';
import type { SessionClock } from './session-clock.ts';

/** What a live session is put together from. */
export interface ConductParts {
  readonly course: Course;
  readonly machine: Machine;
  readonly face: Face;
  readonly recorder: Recorder;
  readonly clock: SessionClock;
  readonly past: Retraced | undefined;
  /** Called once, when every check is through or the person stopped. */
  readonly onOver: (outcome: { readonly verdicts: readonly Verdict[]; readonly stopped: boolean }) => void;
}
