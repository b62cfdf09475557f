import { rulesVersion } from '../diagnose/checks/registry.ts';
import type { SessionFacts } from '../model/session-facts.ts';
import { SessionFolder } from './folder.ts';
import { judgeSaved, readSession } from './saved-session.ts';

export interface Replayed {
  readonly facts: SessionFacts;
  /** The session was judged by other rules when it was live. */
  readonly rulesChanged: boolean;
  /** The journal asks something else than the capture leads to: one of the two was changed. */
  readonly parted: boolean;
}

/** Judges a saved session again from its capture and journal; the verdicts written in the journal are not looked at. */
export function replay(path: string): Replayed {
  const saved = readSession(new SessionFolder(path));
  const facts = judgeSaved(saved);
  return {
    facts,
    rulesChanged: saved.header.rules !== rulesVersion,
    parted: saved.retraced.parted !== undefined,
  };
}
