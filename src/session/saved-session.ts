import type { AnyCheck } from '../diagnose/checks/any-check.ts';
import { registry } from '../diagnose/checks/registry.ts';
import type { Machine } from '../model/machine.ts';
import { readMachineFile } from '../model/machine-file/read.ts';
import type { SessionFacts } from '../model/session-facts.ts';
import { ToolError } from '../model/tool-error.ts';
import { ms, seconds } from '../model/units.ts';
import type { CheckName, Verdict } from '../model/verdict.ts';
import { type CaptureSurvey, surveyOf } from './capture-survey.ts';
import { CaptureWalk } from './capture-walk.ts';
import type { CircuitsKnown } from './circuits-known.ts';
import { Course } from './course.ts';
import { factsOf } from './facts.ts';
import type { SessionFolder, SessionHeader } from './folder.ts';
import { type JournalRecord, readJournal } from './journal.ts';
import { Retrace, type Retraced, verdictKey } from './retrace.ts';
import { streamOf } from './stream-file.ts';
import { StreamReader } from './stream-reader.ts';

/** What its journal makes of a session's capture: its course stands where the journal ends. */
export interface Walked {
  readonly header: SessionHeader;
  readonly machine: Machine;
  readonly course: Course;
  readonly retraced: Retraced;
  /** What its report may tell of circuits. */
  readonly known: CircuitsKnown | undefined;
  readonly records: readonly JournalRecord[];
  /** The length in bytes up to which the journal is sound. */
  readonly journalLength: number;
}

/** A session read back from its folder. */
export interface SavedSession extends Walked {
  readonly survey: CaptureSurvey;
  /** Empty where nobody is to see it. */
  readonly captureHash: string;
}

export function courseOf(
  header: SessionHeader,
  machine: Machine,
  program: string | undefined,
  known: CircuitsKnown | undefined,
): Course {
  const { checks: names, presses, restSeconds, only, search, cycles } = header;
  if (search && !known) throw new Error('A search for a cause needs the circuits.');
  const checks = [...(search && known ? known.searchChecks(search) : []), ...checksNamed(names)];
  const rest = seconds(restSeconds);
  return new Course({
    machine,
    checks,
    presses,
    rest,
    only,
    cycles,
    program,
    explain: known?.possibleCauses,
  });
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

/** Reads a session back, whole. */
export function readSession(folder: SessionFolder, known: CircuitsKnown): SavedSession {
  const walked = walkSession(folder, known);
  const capture = folder.capture();
  const survey = surveyOf(capture, streamOf(folder));
  return withSurvey(walked, survey, capture.hash());
}

/** Goes through a session as its journal tells, and holds no more of its capture than the course needs. `known` left out: faults are not explained. */
export function walkSession(folder: SessionFolder, known?: CircuitsKnown): Walked {
  const header = folder.header();
  const machine = machineOf(folder.machineText());
  const journal = readJournal(folder.journalText());
  const course = courseOf(header, machine, folder.programText(), known);
  const lines = new CaptureWalk(folder.capture({ hashed: false }), new StreamReader(streamOf(folder)), {
    reading: (reading) => void course.reading(reading),
  });
  const retraced = new Retrace(course, lines).walk(journal.records);
  return {
    header,
    machine,
    course,
    retraced,
    known,
    records: journal.records.slice(0, retraced.sound),
    journalLength: journal.ends[retraced.sound - 1] ?? 0,
  };
}

/** The last moment a session knows of may lie behind what its course needed. */
export const withSurvey = (walked: Walked, survey: CaptureSurvey, captureHash: string): SavedSession => ({
  ...walked,
  survey,
  captureHash,
  retraced: { ...walked.retraced, lastAt: ms(Math.max(walked.retraced.lastAt, survey.lastAt)) },
});

/** Judges what the session holds: checks that did not come to their end come out as not tested. */
export function judgeSaved(saved: SavedSession): SessionFacts {
  const { course, retraced } = saved;
  const stopped = !course.isOver;
  const given = new Map<string, Verdict>();
  for (const verdict of [...retraced.verdicts, ...course.stop()]) given.set(verdictKey(verdict), verdict);
  const verdicts = [...given.values()].map((verdict) => course.asThingsAre(verdict));
  return factsOf({ ...saved, verdicts, register: course.register, stopped });
}
