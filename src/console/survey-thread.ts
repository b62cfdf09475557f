import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { CaptureFile } from '../session/capture-file.ts';
import { surveyOf } from '../session/capture-survey.ts';

/** The other end of `surveyBeside`. Nearly every session speaks the native sentences, and needs next to nothing loaded. */
async function surveyed(folder: string) {
  if (!existsSync(join(folder, 'stream.yaml')))
    return surveyOf(new CaptureFile(join(folder, 'capture.log'), { hashed: false }), undefined);
  const { surveyFolder } = await import('../session/survey-folder.ts');
  return surveyFolder(folder);
}

void surveyed(String(workerData)).then((survey) => parentPort?.postMessage(survey));
