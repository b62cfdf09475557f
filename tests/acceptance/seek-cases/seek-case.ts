import type { CheckName } from '../../../src/model/verdict.ts';
import { dangersIn, type MotionCase, motionFound, motionSession } from '../motion-bench.ts';

/** One way in which the bench plays a case, and everything that must then be said: nothing less, nothing more. */
export interface Play extends MotionCase {
  /** What wire, motor or setting then does, and why that is what must be found (common practice, no source). */
  readonly because: string;
  /** Verdicts that are not plainly proved, in their order: findings, in brackets everything each can have been, then what is missing. */
  readonly found: readonly string[];
  /** What was sounded while it moved. */
  readonly dangers?: readonly string[];
}

/** One situation that a seek can really be in, and every way in which the bench plays it. */
export interface SeekCase {
  readonly name: string;
  readonly plays: readonly [Play, ...Play[]];
}

const looked: readonly CheckName[] = ['press', 'stop', 'seek', 'homing', 'repeat', 'scale'];

export interface Said {
  readonly found: readonly string[];
  readonly dangers: readonly string[];
}

const sessions = new Map<Play, Promise<Said>>();

/** What a session says of a play that it would not say of a sound machine. */
export function saidOf(play: Play): Promise<Said> {
  const said = sessions.get(play) ?? playedOnce(play);
  sessions.set(play, said);
  return said;
}

async function playedOnce(play: Play): Promise<Said> {
  const outcome = await motionSession(play);
  return {
    found: motionFound(outcome, looked).filter((line) => !line.endsWith(': proved')),
    dangers: dangersIn(outcome),
  };
}
