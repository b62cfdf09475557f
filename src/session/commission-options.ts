import type { SearchOrder } from '../model/cause-facts.ts';
import type { Source, Timekeeper } from '../model/source.ts';
import type { CheckName } from '../model/verdict.ts';
import type { Face } from './operator.ts';

export interface CommissionOptions {
  readonly source: Source;
  readonly face: Face;
  readonly time: Timekeeper;
  readonly folder: string;
  readonly resume: boolean;
  /** Undefined on a resume: the session's own copy is used. */
  readonly machineText: string | undefined;
  /** A stream description that reads; left out: the native sentences, or on a resume the session's own. */
  readonly streamText?: string | undefined;
  readonly checks: readonly CheckName[];
  readonly presses: number;
  readonly restSeconds: number;
  readonly only: readonly string[] | undefined;
  /** The person may send lines of her own while she is asked to move the machine; left out: she may not. */
  readonly ownLine?: boolean | undefined;
  /** The cause of one input's trouble is sought before the checks, which are then its re-test. */
  readonly search?: SearchOrder | undefined;
  /** Homings watched by the repeat check; left out: as many as is usual. */
  readonly cycles?: number | undefined;
  /** An RS-274 program that is to fit the machine. */
  readonly programText?: string | undefined;
  /** What the person types to have this port’s stream learned, for when nothing of it is understood; left out: she is told of learning alone. */
  readonly learnCommand?: string | undefined;
  readonly toolVersion: string;
  /** UTC, ISO 8601; read once from a clock by the caller, used only where a session begins. */
  readonly startedUtc: string;
}
