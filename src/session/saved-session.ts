import { searchChecks } from '../diagnose/cause-finding/checks.ts';
import type { AnyCheck } from '../diagnose/checks/any-check.ts';
import { registry } from '../diagnose/checks/registry.ts';
import type { Machine } from '../model/machine.ts';
import { readMachineFile } from '../model/machine-file/read.ts';
import type { SessionFacts } from '../model/session-facts.ts';
import { ToolError } from '../model/tool-error.ts';
import { type Millis, seconds } from '../model/units.ts';
import type { CheckName, Verdict } from '../model/verdict.ts';
import { CaptureWalk } from './capture-walk.ts';
import { Course } from './course.ts';
import { factsOf } from './facts.ts';
import type { SessionFolder, SessionHeader } from './folder.ts';
import { type JournalRecord, readJournal } from './journal.ts';
import { Retrace, type Retraced, verdictKey } from './retrace.ts';
import { streamOf } from './stream-file.ts';
import { StreamReader } from './stream-reader.ts';
import { StreamStatistics } from './stream-statistics.ts';

/** A session read back from its folder: its course stands where the journal ends. */
export interface SavedSession {
  readonly header: SessionHeader;
  readonly machine: Machine;
  readonly course: Course;
  readonly retraced: Retraced;
  readonly records: readonly JournalRecord[];
  readonly statistics: StreamStatistics;
  /** Every input the stream ever declared. */
  readonly inputs: readonly string[];
  readonly sent: SessionFacts['sent'];
  /** Sound entries of the capture, and the lengths in bytes up to which both files are sound. */
  readonly lines: number;
  readonly captureLength: number;
  readonly journalLength: number;
  readonly captureHash: string;
}

export function courseOf(
  header: SessionHeader,
  machine: Machine,
  program: string | undefined,
  explained = true,
): Course {
  const { checks: names, presses, restSeconds, only, search, cycles } = header;
  const checks = [...(search ? searchChecks(search) : []), ...checksNamed(names)];
  const rest = seconds(restSeconds);
  return new Course({ machine, checks, presses, rest, only, cycles, program, explained });
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

/** Reads a session in one pass over its capture, of which no more is held than the course needs. `explained`: as the course takes it. */
export function readSession(folder: SessionFolder, explained = true): SavedSession {
  const header = folder.header();
  const machine = machineOf(folder.machineText());
  const journal = readJournal(folder.journalText());
  const course = courseOf(header, machine, folder.programText(), explained);
  const statistics = new StreamStatistics();
  const inputs = new Set<string>();
  const sent: { at: Millis; text: string }[] = [];
  const capture = folder.capture();
  const lines = new CaptureWalk(capture, new StreamReader(streamOf(folder)), {
    reading: (reading) => {
      course.reading(reading);
      statistics.take(reading);
      if (reading.kind === 'declared') for (const input of reading.inputs) inputs.add(input);
    },
    passing: (passing) => statistics.report(passing),
    line: (line) => {
      if (line.kind === 'tx') sent.push({ at: line.at, text: line.text });
    },
  });
  const retraced = new Retrace(course, lines).walk(journal.records);
  return {
    header,
    machine,
    course,
    retraced,
    records: journal.records.slice(0, retraced.sound),
    statistics,
    inputs: [...inputs],
    sent,
    lines: retraced.lines,
    captureLength: capture.length,
    journalLength: journal.ends[retraced.sound - 1] ?? 0,
    captureHash: capture.hash(),
  };
}

/** Judges what the session holds: checks that did not come to their end come out as not tested. */
export function judgeSaved(saved: SavedSession): SessionFacts {
  const { course, retraced } = saved;
  const stopped = !course.isOver;
  const given = new Map<string, Verdict>();
  for (const verdict of [...retraced.verdicts, ...course.stop()]) given.set(verdictKey(verdict), verdict);
  const verdicts = [...given.values()].map((verdict) => course.asThingsAre(verdict));
  return factsOf({ ...saved, verdicts, register: course.register, stopped });
}
