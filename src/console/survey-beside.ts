import { once } from 'node:events';
import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { CaptureSurvey } from '../session/capture-survey.ts';

/** Below this a thread takes longer to start than to do its work. Bytes. */
const worthAThread = 16 * 1024 * 1024;

export interface Survey {
  /** Waits for it. Rejects with what it failed with. */
  done(): Promise<CaptureSurvey>;
  /** Nobody waits for it any more. */
  leave(): void;
}

const begun = new Map<string, Survey | undefined>();

/**
 * Begins to go through the capture of a session in a thread of its own, while the session is judged in this one; whoever asks again is
 * given the one that was begun. Undefined where that gains nothing.
 */
export function surveyBeside(folder: string): Survey | undefined {
  if (!begun.has(folder)) begun.set(folder, begin(folder));
  return begun.get(folder);
}

function begin(folder: string): Survey | undefined {
  const thread = new URL('./survey-thread.js', import.meta.url);
  // Run from its sources the program has no file that a thread could begin with.
  if (lengthOf(folder) < worthAThread || !existsSync(thread)) return undefined;
  const worker = new Worker(thread, {
    workerData: folder,
    // What Node was told to load before the program is not for the thread.
    execArgv: [],
    // It makes next to nothing that lasts.
    resourceLimits: { maxYoungGenerationSizeMb: 8 },
  });
  const told = once(worker, 'message').then(([survey]) => survey as CaptureSurvey);
  // Whoever does not wait for it is not told of its failure either.
  told.catch(() => {});
  return { done: () => told, leave: () => void worker.terminate() };
}

/** Made in this thread, once it is asked for. */
export async function surveyHere(folder: string): Promise<CaptureSurvey> {
  const { surveyFolder } = await import('../session/survey-folder.ts');
  return surveyFolder(folder);
}

function lengthOf(folder: string): number {
  if (!existsSync(join(folder, 'session.json'))) return 0;
  return statSync(join(folder, 'capture.log'), { throwIfNoEntry: false })?.size ?? 0;
}
