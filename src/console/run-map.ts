import type { Machine } from '../model/machine.ts';
import { ToolError } from '../model/tool-error.ts';
import type { Verdict } from '../model/verdict.ts';
import { visible } from '../model/visible.ts';
import { inputMap } from '../report/input-map.ts';
import { mapText } from '../report/map-text.ts';
import type { InputRow } from '../report/schema/input-row.ts';
import { SessionFolder, sha256 } from '../session/folder.ts';
import { replay } from '../session/replay.ts';
import { momentText } from '../words/figures.ts';
import { lastSession } from './last-session.ts';
import { machineIn, textOfFile } from './read-machine.ts';

interface Mapped {
  readonly rows: readonly InputRow[];
  readonly text: string;
}

/** Declared by the file, found by the session; a session of another file is never mixed in unless it was named. */
export function mapOf(session: string | undefined, machineFile: string | undefined): Mapped {
  const text = machineFile === undefined ? undefined : textOfFile(machineFile);
  const own = text === undefined ? undefined : machineIn(text, machineFile ?? '');
  const isOfFile = (each: SessionFolder) => text === undefined || each.header().machineHash === sha256(text);
  const folder = session ?? lastSession('sessions', isOfFile);
  if (folder === undefined) {
    if (own) return mapped(own, [], 'No session with this file is under sessions: nothing was found yet.');
    throw new ToolError(
      'file-missing',
      'There is no session under sessions.',
      'Name a session folder, or a machine file with --machine.',
    );
  }
  const { facts } = replay(folder);
  const other = isOfFile(new SessionFolder(folder)) ? '' : ', which began with another machine file';
  const from = `Found in the session of ${momentText(facts.started)} in ${folder}${other}.`;
  return mapped(own ?? facts.machine, facts.verdicts, from);
}

function mapped(machine: Machine, verdicts: readonly Verdict[], from: string): Mapped {
  const rows = inputMap(machine, verdicts);
  return { rows, text: `${visible(`${machine.name}. ${from}`)}\n\n${mapText(rows)}` };
}
