import { circuitsKnown } from './circuits-known.ts';
import { SessionFolder } from './folder.ts';
import { type Replayed, replayedOf } from './replayed.ts';
import { readSession } from './saved-session.ts';

/** Judges a saved session again from its capture and journal; the verdicts written in the journal are not looked at. */
export function replay(path: string): Replayed {
  const folder = new SessionFolder(path);
  return replayedOf(folder, readSession(folder, circuitsKnown));
}
