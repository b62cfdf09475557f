import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { readMachineFile } from '../model/machine-file/read.ts';
import { SessionFolder, sha256 } from '../session/folder.ts';
import { readJournal } from '../session/journal.ts';

/** One session, as far as it matters which of several is meant. */
export interface Kept {
  readonly path: string;
  /** UTC, ISO 8601. */
  readonly started: string;
  /** The machine’s name in the session’s own copy of the file; undefined where that cannot be read. */
  readonly machine: string | undefined;
  readonly machineHash: string;
  /** The whole machine was gone through, rather than the cause of one switch’s trouble looked for. */
  readonly isCommissioning: boolean;
  /** At least one switch was pressed or unplugged, and a result came of it. */
  readonly hasResults: boolean;
}

/** The machine a session is wanted of: its name, and the very text of its file. */
export interface Wanted {
  readonly name: string;
  readonly text: string;
}

/** The sound sessions below a folder, the newest first. Folders that are no session, or a damaged one, are passed over. */
export function sessionsBelow(below: string): readonly Kept[] {
  if (!existsSync(below)) return [];
  return readdirSync(below, { withFileTypes: true })
    .filter((each) => each.isDirectory())
    .flatMap((each) => kept(new SessionFolder(join(below, each.name))) ?? [])
    .toSorted((a, b) => (a.started < b.started ? 1 : -1));
}

/**
 * The session that says most of a machine: of this very file before one that only has the machine’s name, a commissioning with
 * results before one that was broken off, and that before a search for a cause; of equal ones the last. Undefined: none is of it.
 */
export function sessionOf(wanted: Wanted | undefined, sessions: readonly Kept[]): Kept | undefined {
  const own = sessions.filter((each) => isOf(wanted, each));
  const preferred = [
    (each: Kept) => each.isCommissioning && each.hasResults && isOfFile(wanted, each),
    (each: Kept) => each.isCommissioning && each.hasResults,
    (each: Kept) => each.isCommissioning,
    () => true,
  ];
  return preferred.flatMap((suits) => own.find(suits) ?? [])[0];
}

const isOf = (wanted: Wanted | undefined, each: Kept): boolean =>
  wanted === undefined || isOfFile(wanted, each) || each.machine === wanted.name;

export const isOfFile = (wanted: Wanted | undefined, { machineHash }: Kept): boolean =>
  wanted === undefined || machineHash === sha256(wanted.text);

function kept(folder: SessionFolder): Kept | undefined {
  if (!folder.exists) return undefined;
  try {
    const { started, machineHash, search } = folder.header();
    return {
      path: folder.path,
      started,
      machine: readMachineFile(folder.machineText()).machine?.name,
      machineHash,
      isCommissioning: search === undefined,
      hasResults: readJournal(folder.journalText()).records.some(
        (each) =>
          each.kind === 'verdict' &&
          (each.verdict.check === 'press' || each.verdict.check === 'open-wire') &&
          ['proved', 'limited', 'failed'].includes(each.verdict.status),
      ),
    };
  } catch {
    return undefined;
  }
}
