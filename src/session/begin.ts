import { rulesVersion } from '../diagnose/checks/registry.ts';
import type { Machine } from '../model/machine.ts';
import { ToolError } from '../model/tool-error.ts';
import { circuitsKnown } from './circuits-known.ts';
import type { CommissionOptions } from './commission-options.ts';
import { SessionFolder, type SessionHeader, sha256 } from './folder.ts';
import { machineOf, readSession, type SavedSession } from './saved-session.ts';

export interface Beginning {
  readonly folder: SessionFolder;
  readonly saved: SavedSession | undefined;
  readonly machine: Machine;
  readonly header: SessionHeader;
}

/** Refuses what cannot be begun, before any port is opened for it. */
export function checkBeginning({ folder: path, resume, machineText }: CommissionOptions): void {
  const folder = new SessionFolder(path);
  if (resume && folder.exists) return;
  folder.refuseIfFilled();
  if (machineText !== undefined) return;
  throw new ToolError(
    'wrong-usage',
    'No machine file was given.',
    'Name one with --machine; `tellwire check --new machine` prints one to begin with.',
  );
}

/** A new session in an empty folder, or the one that is there. */
export function begin(options: CommissionOptions): Beginning {
  const folder = new SessionFolder(options.folder);
  if (options.resume && folder.exists) {
    const saved = readSession(folder, circuitsKnown);
    refuseIfChanged(saved, options);
    refuseIfCopyChanged(folder, saved.header);
    return { folder, saved, machine: saved.machine, header: saved.header };
  }
  const {
    machineText = '',
    streamText,
    checks,
    presses,
    restSeconds,
    only,
    search,
    cycles,
    programText,
    toolVersion,
    startedUtc,
  } = options;
  const header: SessionHeader = {
    format: 1,
    tool: toolVersion,
    rules: rulesVersion,
    started: startedUtc,
    port: options.source.port,
    machineHash: sha256(machineText),
    ...(streamText !== undefined && { streamHash: sha256(streamText) }),
    checks: [...checks],
    presses,
    restSeconds,
    ...(only && { only: [...only] }),
    ...(cycles !== undefined && { cycles }),
    ...(programText !== undefined && { programHash: sha256(programText) }),
    ...(search && { search: { ...search, earlier: [...search.earlier] } }),
  };
  const machine = machineOf(machineText);
  return {
    folder: SessionFolder.create(options.folder, header, machineText, streamText, programText),
    saved: undefined,
    machine,
    header,
  };
}

/** What was asked and judged rests on the copies as they were: one that was edited since is another file. */
function refuseIfCopyChanged(folder: SessionFolder, header: SessionHeader): void {
  const copies = [
    ['machine file', folder.machineText(), header.machineHash],
    ['stream description', folder.streamText(), header.streamHash],
    ['program', folder.programText(), header.programHash],
  ] as const;
  for (const [what, text, hash] of copies) {
    if (text === undefined || sha256(text) === hash) continue;
    const found = `The session's copy of the ${what} is not the one it began with: it was changed since.`;
    throw new ToolError(
      'session-differs',
      found,
      'Restore it from a copy of the folder, or begin a new session.',
    );
  }
}

/** Evidence gathered under one machine file or one set of rules is not gone on with under another. */
function refuseIfChanged(
  { header, retraced }: SavedSession,
  { machineText, streamText, programText }: CommissionOptions,
): void {
  const refuse = (what: string, tryNext: string): never => {
    throw new ToolError('session-differs', what, tryNext);
  };
  if (machineText !== undefined && sha256(machineText) !== header.machineHash) {
    refuse(
      'The machine file is not the one this session began with.',
      'Leave out --machine to go on with its copy, or begin a new session.',
    );
  }
  if (streamText !== undefined && sha256(streamText) !== header.streamHash) {
    refuse(
      'The stream description is not the one this session began with.',
      'Leave out --stream to go on with its copy, or begin a new session.',
    );
  }
  if (programText !== undefined && sha256(programText) !== header.programHash) {
    refuse(
      'The program is not the one this session began with.',
      'Leave out --program to go on with its copy, or begin a new session.',
    );
  }
  if (header.rules !== rulesVersion) {
    refuse(
      `This session was judged by rules ${header.rules}; this version judges by rules ${rulesVersion}.`,
      'Look at it with replay, or begin a new session.',
    );
  }
  if (retraced.parted) {
    refuse(
      'The journal asks something else than the capture leads to; one of the two was changed.',
      'Look at it with replay, or begin a new session.',
    );
  }
}
