import { earlierEvidence } from '../diagnose/cause-finding/earlier.ts';
import type { SearchOrder } from '../model/cause-facts.ts';
import { allSwitches, type Machine } from '../model/machine.ts';
import type { SessionFacts } from '../model/session-facts.ts';
import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { SessionFolder } from '../session/folder.ts';
import { replay } from '../session/replay.ts';
import { listed } from '../words/figures.ts';
import { withSession } from './bundled.ts';
import { switchesToTry } from './options.ts';

/** A session that a search begins from: its copies of the files, and what it had shown. */
export interface From {
  readonly path: string;
  readonly facts: SessionFacts;
  readonly machineText: string;
  readonly streamText: string | undefined;
}

export const fromSession = (path: string): From =>
  withSession(path, (folder) => {
    const files = new SessionFolder(folder);
    return {
      path,
      facts: replay(folder).facts,
      machineText: files.machineText(),
      streamText: files.streamText(),
    };
  });

/** The switch that is meant: a subject of the machine file, or the name of an input that has one switch only. */
export function subjectNamed(name: string, machine: Machine): string {
  const switches = allSwitches(machine);
  const found = switches.filter(({ subject, input }) => subject === name || input === name);
  const exact = found.find(({ subject }) => subject === name) ?? (found.length === 1 ? found[0] : undefined);
  if (exact) return exact.subject;
  const known = listed(found.map(({ subject }) => subject));
  throw new ToolError(
    'wrong-usage',
    found.length > 0
      ? `${visible(name)} has several switches.`
      : `The machine file has no switch ${visible(name)}.`,
    found.length > 0 ? `Name one: ${known}.` : switchesToTry(name, machine),
  );
}

/** How the search is led: what the earlier session showed counts, unless the person says how the machine stands. */
export function orderFor(
  subject: string,
  machine: Machine,
  from: From | undefined,
  state: string | undefined,
): SearchOrder {
  const earlier = from
    ? earlierEvidence(from.facts.verdicts, machine, subject)
    : { history: 'fresh' as const, stopProved: false, earlier: [] };
  return { subject, ...earlier, ...(state === undefined ? {} : { history: historyNamed(state) }) };
}

function historyNamed(state: string): SearchOrder['history'] {
  if (state === 'fresh' || state === 'worked') return state;
  throw new ToolError(
    'wrong-usage',
    `--machine-state ${visible(state)}: not understood.`,
    'Write fresh for a new build, or worked for a machine that did its duty before.',
  );
}
