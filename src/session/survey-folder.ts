import { type CaptureSurvey, surveyOf } from './capture-survey.ts';
import { SessionFolder } from './folder.ts';
import { streamOf } from './stream-file.ts';

/** What the capture of a session holds. Throws ToolError where the folder holds no session. */
export function surveyFolder(path: string): CaptureSurvey {
  const folder = new SessionFolder(path);
  return surveyOf(folder.capture({ hashed: false }), streamOf(folder));
}
