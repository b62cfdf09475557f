import type { Ask } from '../../model/ask.ts';
import type { Ended, Guard } from '../../model/procedure.ts';
import type { StatusReading } from '../../model/reading.ts';
import type { Millis } from '../../model/units.ts';
import type { Missing } from '../../model/verdict.ts';
import { resolutionOf } from '../signal/resolution.ts';
import { lastStatus } from '../signal/track.ts';

/** A piece of a procedure that asks and comes to a result. */
export type Asking<Result> = Generator<{ readonly ask: Ask; readonly guard?: Guard }, Result, Ended>;

/** What the stream last said, carried from ask to ask. */
export interface Latest {
  status: StatusReading | undefined;
  /** What it said before the ask under which it broke off; no level to judge by, but what to expect when it is back. */
  before?: StatusReading | undefined;
  /** The middle time between two reports, controller clock, as last measured. */
  period?: Millis | undefined;
}

export function* put(ask: Ask, latest: Latest, guard?: Guard): Asking<Ended> {
  const ended = yield guard ? { ask, guard } : { ask };
  latest.period = resolutionOf(ended.window)?.median ?? latest.period;
  if (ended.by !== 'gap') latest.status = lastStatus(ended.window);
  else {
    latest.before = latest.status ?? latest.before;
    latest.status = undefined;
  }
  return ended;
}

/** Why an answer leaves a check without its evidence; undefined for "done" and "yes". */
export function refusal(ended: Ended): Missing | undefined {
  switch (ended.answer) {
    case 'skip':
      return 'skipped';
    case 'cannot':
      return 'cannot';
    case 'not-sure':
      return 'not-sure';
    default:
      return undefined;
  }
}
