import type { AnyCheck } from '../diagnose/checks/any-check.ts';
import { registry } from '../diagnose/checks/registry.ts';
import type { Machine } from '../model/machine.ts';
import { readMachineFile } from '../model/machine-file/read.ts';
import type { SessionFacts } from '../model/session-facts.ts';
import { ToolError } from '../model/tool-error.ts';
import { type Millis, seconds } from '../model/units.ts';
import type { CheckName, Verdict } from '../model/verdict.ts';
import { type CaptureEntry, type CaptureLine, captureReader } from '../transport/capture.ts';
import { Course } from './course.ts';
import { factsOf } from './facts.ts';
import { type SessionFolder, type SessionHeader, sha256 } from './folder.ts';
import { type JournalRecord, readJournal } from './journal.ts';
import { Retrace, type Retraced, verdictKey } from './retrace.ts';
import { StreamStatistics } from './stream-statistics.ts';

/** A session read back from its folder: its course stands where the journal ends. */
export interface SavedSession {
  readonly header: SessionHeader;
  readonly machine: Machine;
  readonly course: Course;
  readonly retraced: Retraced;
  readonly records: readonly JournalRecord[];
  readonly statistics: StreamStatistics;
  readonly sent: readonly { readonly at: Millis; readonly text: string }[];
  /** Sound entries of the capture, and the lengths in bytes up to which both files are sound. */
  readonly lines: number;
  readonly captureLength: number;
  readonly journalLength: number;
  readonly captureHash: string;
}

export function courseOf(header: SessionHeader, machine: Machine): Course {
  const { checks, presses, restSeconds, only } = header;
  return new Course({ machine, checks: checksNamed(checks), presses, rest: seconds(restSeconds), only });
}

const checksNamed = (names: readonly CheckName[]): readonly AnyCheck[] =>
  registry.filter((check) => names.includes(check.name));

/** The machine of a copied file, which was sound when the session began. */
export function machineOf(text: string): Machine {
  const read = readMachineFile(text);
  if ('machine' in read) return read.machine;
  throw new ToolError(
    'session-damaged',
    "The session's copy of the machine file no longer reads.",
    'Restore machine.yaml from a copy of the folder.',
  );
}

export function readSession(folder: SessionFolder): SavedSession {
  const header = folder.header();
  const machine = machineOf(folder.machineText());
  const captureBytes = folder.captureBytes();
  const capture = captureReader();
  const entries = capture.push(captureBytes);
  const captureLength = capture.soundBytes;
  const { records, bytes: journalLength } = readJournal(folder.journalText(), entries.length);
  const course = courseOf(header, machine);
  const statistics = new StreamStatistics();
  const retraced = new Retrace(course, entries, (reading) => statistics.take(reading)).walk(records);
  return {
    header,
    machine,
    course,
    retraced,
    records,
    statistics,
    sent: entries.filter(isSent).map(({ at, text }) => ({ at, text })),
    lines: entries.length,
    captureLength,
    journalLength,
    captureHash: sha256(captureBytes.subarray(0, captureLength)),
  };
}

const isSent = (entry: CaptureLine): entry is Extract<CaptureEntry, { kind: 'tx' }> => entry.kind === 'tx';

/** Judges what the session holds: checks that did not come to their end come out as not tested. */
export function judgeSaved(saved: SavedSession): SessionFacts {
  const { course, retraced } = saved;
  const stopped = !course.isOver;
  const given = new Map<string, Verdict>();
  for (const verdict of [...retraced.verdicts, ...course.stop()]) given.set(verdictKey(verdict), verdict);
  for (const verdict of course.takenBack([...given.values()])) given.set(verdictKey(verdict), verdict);
  return factsOf({ ...saved, verdicts: [...given.values()], register: course.register, stopped });
}
