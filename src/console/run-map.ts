import type { Machine } from '../model/machine.ts';
import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { buildRecord } from '../report/build-record.ts';
import { inputMap, isUntested } from '../report/input-map.ts';
import { mapFormatNames, mapFormats } from '../report/map-formats.ts';
import { mapText } from '../report/map-text.ts';
import { type MapPage, mapPage } from '../report/proof.ts';
import { SessionFolder, sha256 } from '../session/folder.ts';
import { replay } from '../session/replay.ts';
import { listed } from '../words/figures.ts';
import { mapWords } from '../words/map-words.ts';
import { withSession } from './bundled.ts';
import { type Kept, sessionOf, sessionsBelow } from './last-session.ts';
import { machineIn, textOfFile } from './read-machine.ts';

/** Declared by the file, found by the session. Without a session named it is the one that says most of the machine. */
export function mapOf(
  session: string | undefined,
  machineFile: string | undefined,
  below = 'sessions',
): MapPage {
  const own = machineFile === undefined ? undefined : fileAt(machineFile);
  if (session !== undefined) return found(session, own, []);
  const sessions = sessionsBelow(below);
  const wanted = own && { name: own.machine.name, text: own.text };
  const chosen = sessionOf(wanted, sessions);
  if (chosen) return found(chosen.path, own, own ? [] : otherMachines(chosen, sessions));
  if (own) return unproved(own.machine, below);
  throw new ToolError(
    'file-missing',
    `There is no session under ${below}.`,
    'Name a session folder, or a machine file with --machine.',
  );
}

interface OwnFile {
  readonly text: string;
  readonly machine: Machine;
}

function fileAt(path: string): OwnFile {
  const text = textOfFile(path);
  return { text, machine: machineIn(text, path) };
}

/** Names of the machines that have sessions beside the one that was chosen. */
const otherMachines = (chosen: Kept, sessions: readonly Kept[]): readonly string[] => [
  ...new Set(sessions.flatMap(({ machine }) => machine ?? []).filter((name) => name !== chosen.machine)),
];

const found = (session: string, own: OwnFile | undefined, others: readonly string[]): MapPage =>
  withSession(session, (folder) => {
    const { facts } = replay(folder);
    const { machineHash, search } = new SessionFolder(folder).header();
    const machine = own?.machine ?? facts.machine;
    const rows = inputMap(machine, facts.verdicts);
    const untested = rows.filter(isUntested).map(({ subject }) => subject);
    const isOther = own !== undefined && machineHash !== sha256(own.text);
    const isOtherMachine = isOther && facts.machine.name !== machine.name;
    const from = [
      mapWords.from(search ? 'search' : 'commissioning', facts.started, session),
      ...(isOtherMachine ? [mapWords.otherMachine(facts.machine.name)] : []),
      ...(isOther && !isOtherMachine ? [mapWords.otherFile] : []),
      ...(untested.length === 0 ? [] : [mapWords.nobodyTested(untested, rows.length)]),
      ...(others.length === 0 ? [] : [mapWords.otherMachinesToo(others)]),
    ].join(' ');
    const { verdicts } = buildRecord(facts);
    return mapPage({ machine: machine.name, from, rows, verdicts, started: facts.started });
  });

const unproved = (machine: Machine, below: string): MapPage =>
  mapPage({
    machine: machine.name,
    from: mapWords.none(below),
    rows: inputMap(machine),
    verdicts: [],
    started: '',
  });

/** The map in a format; without one, for a terminal. */
export function mapIn(format: string | undefined, page: MapPage): string {
  if (format === undefined) return mapText(page);
  const name = mapFormatNames.find((each) => each === format);
  if (name) return mapFormats[name](page);
  throw new ToolError(
    'wrong-usage',
    `The format ${visible(format)} is none of a map's.`,
    `There are ${listed(mapFormatNames)}.`,
  );
}
