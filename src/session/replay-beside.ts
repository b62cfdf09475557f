import type { CaptureSurvey } from './capture-survey.ts';
import { SessionFolder } from './folder.ts';
import { type Replayed, replayedOf } from './replayed.ts';
import { walkSession, withSurvey } from './saved-session.ts';

/**
 * Judges a saved session again while the survey of its capture is made elsewhere: what stands in that behind the last ask is left to it.
 * `explained`: with the circuits, and with what each fault may come from.
 */
export async function replayBeside(
  path: string,
  survey: () => Promise<CaptureSurvey>,
  explained: boolean,
): Promise<Replayed> {
  const folder = new SessionFolder(path);
  const isSearch = folder.header().search !== undefined;
  const known = explained || isSearch ? (await import('./circuits-known.ts')).circuitsKnown : undefined;
  const walked = walkSession(folder, known);
  // Hashed here: the survey takes longer than the judging.
  const hash = folder.capture().hashWhole();
  return replayedOf(folder, withSurvey(walked, await survey(), hash));
}
