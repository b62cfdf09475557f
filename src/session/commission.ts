import type { SessionFacts } from '../model/session-facts.ts';
import { ToolError } from '../model/tool-error.ts';
import { ms } from '../model/units.ts';
import type { Verdict } from '../model/verdict.ts';
import { exitCodeFor } from '../report/exit-code.ts';
import { begin, checkBeginning } from './begin.ts';
import { circuitsKnown } from './circuits-known.ts';
import type { CommissionOptions } from './commission-options.ts';
import { conductLive } from './live.ts';
import { openedFirst } from './opened-first.ts';
import { Recorder } from './recorder.ts';
import { courseOf, judgeSaved, readSession } from './saved-session.ts';
import { SessionClock } from './session-clock.ts';
import { streamOf } from './stream-file.ts';
import { StreamReader } from './stream-reader.ts';
import { writeReport } from './write-report.ts';

export type { CommissionOptions } from './commission-options.ts';

export interface CommissionOutcome {
  readonly exit: 0 | 1 | 2;
  readonly folder: string;
  readonly report: string;
  readonly facts: SessionFacts;
}

/** Between the last moment a broken-off session knows of and its resume, on the session's clock. */
const resumeStep = 1000;

/** Runs a commissioning from opening the port to the written report. Rejects with a ToolError where the tool itself cannot go on. */
export async function commission(options: CommissionOptions): Promise<CommissionOutcome> {
  checkBeginning(options);
  const source = await openedFirst(options.source, options.time);
  try {
    return await run({ ...options, source });
  } catch (cause) {
    await source.close();
    throw cause;
  }
}

async function run(options: CommissionOptions): Promise<CommissionOutcome> {
  const { folder, saved, machine, header } = begin(options);
  const clock = new SessionClock(options.time, saved ? ms(saved.retraced.lastAt + resumeStep) : ms(0));
  const reader = new StreamReader(streamOf(folder));
  const writer = folder.writer(saved?.survey.length ?? 0, saved?.journalLength ?? 0);
  const recorder = new Recorder(writer, reader, {
    lines: saved?.survey.lines ?? 0,
    records: saved?.records ?? [],
  });
  if (saved) recorder.note<'resumed'>({ kind: 'resumed' }, clock.now());
  const live = await conductLive(options, {
    clock,
    reader,
    recorder,
    machine,
    course: saved?.course ?? courseOf(header, machine, folder.programText(), circuitsKnown),
    saved,
  });
  recorder.close();
  const facts = judgeSaved(readSession(folder, circuitsKnown));
  sameAsLive(live, facts.verdicts);
  const report = writeReport(folder, facts);
  const exit = exitCodeFor(facts.verdicts, facts.stopped);
  options.face.show({ kind: 'finished', session: folder.path, report, exit });
  await options.face.close();
  return { exit, folder: folder.path, report, facts };
}

/** What was said live and what the saved files say must be the same; anything else is a defect of the tool, and is said. */
function sameAsLive(live: readonly Verdict[], saved: readonly Verdict[]): void {
  const plain = (verdicts: readonly Verdict[]) =>
    JSON.stringify(
      verdicts.map(({ check, subject, status, findings }) => [check, subject, status, findings]).sort(),
    );
  if (plain(live) === plain(saved)) return;
  throw new ToolError(
    'internal',
    'The saved session does not give the verdicts that were shown.',
    'Keep the session folder and report this.',
  );
}
