import type { CaptureSurvey } from './capture-survey.ts';
import { SessionFolder } from './folder.ts';
import { type Replayed, replayedOf } from './replayed.ts';
import { walkSession, withSurvey } from './saved-session.ts';

/**
 * Judges a saved session again while the survey of its capture is made elsewhere: what stands in that behind the last ask is left to it.
 * `explained`: with all that a report tells beside the verdicts: the circuits, what each fault may come from, the hash of the capture.
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
  const hash = explained ? folder.capture().hashWhole() : '';
  return replayedOf(folder, withSurvey(walked, await survey(), hash));
}
