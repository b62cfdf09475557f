import type { Machine } from '../model/machine.ts';
import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { buildRecord } from '../report/build-record.ts';
import { inputMap } from '../report/input-map.ts';
import { mapFormatNames, mapFormats } from '../report/map-formats.ts';
import { mapText } from '../report/map-text.ts';
import { type MapPage, mapPage } from '../report/proof.ts';
import { SessionFolder, sha256 } from '../session/folder.ts';
import { replay } from '../session/replay.ts';
import { listed, momentText } from '../words/figures.ts';
import { withSession } from './bundled.ts';
import { lastSession } from './last-session.ts';
import { machineIn, textOfFile } from './read-machine.ts';

/** Declared by the file, found by the session; a session of another file is never mixed in unless it was named. */
export function mapOf(session: string | undefined, machineFile: string | undefined): MapPage {
  const text = machineFile === undefined ? undefined : textOfFile(machineFile);
  const own = text === undefined ? undefined : machineIn(text, machineFile ?? '');
  const isOfFile = (each: SessionFolder) => text === undefined || each.header().machineHash === sha256(text);
  const folder = session ?? lastSession('sessions', isOfFile);
  if (folder === undefined) {
    if (own) return unproved(own);
    throw new ToolError(
      'file-missing',
      'There is no session under sessions.',
      'Name a session folder, or a machine file with --machine.',
    );
  }
  return withSession(folder, (opened) => {
    const { facts } = replay(opened);
    const { verdicts } = buildRecord(facts);
    const other = isOfFile(new SessionFolder(opened)) ? '' : ', which began with another machine file';
    const from = `Found in the session of ${momentText(facts.started)} in ${folder}${other}.`;
    const machine = own ?? facts.machine;
    const rows = inputMap(machine, facts.verdicts);
    return mapPage({ machine: machine.name, from, rows, verdicts, started: facts.started });
  });
}

const unproved = (machine: Machine): MapPage =>
  mapPage({
    machine: machine.name,
    from: 'No session with this file is under sessions: nothing was found yet.',
    rows: inputMap(machine),
    verdicts: [],
    started: '',
  });

/** The map in a format; without one, for a terminal. */
export function mapIn(format: string | undefined, page: MapPage): string {
  if (format === undefined) return `${visible(`${page.machine}. ${page.from}`)}\n\n${mapText(page.rows)}`;
  const name = mapFormatNames.find((each) => each === format);
  if (name) return mapFormats[name](page);
  throw new ToolError(
    'wrong-usage',
    `The format ${visible(format)} is none of a map's.`,
    `There are ${listed(mapFormatNames)}.`,
  );
}
