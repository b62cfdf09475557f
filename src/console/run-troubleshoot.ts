import { beginSearch } from '../diagnose/cause-finding/begin-search.ts';
import { candidatesOf } from '../diagnose/cause-finding/candidates.ts';
import type { SearchOrder } from '../model/cause-facts.ts';
import { type Machine, switchOf } from '../model/machine.ts';
import { ToolError } from '../model/tool-error.ts';
import { buildRecord } from '../report/build-record.ts';
import { summaryText } from '../report/summary-text.ts';
import { commission } from '../session/commission.ts';
import { atMachine, machineOf, portNamed, resumedSession } from './at-machine.ts';
import { isTerminal } from './choose-face.ts';
import type { TroubleshootFlags } from './commands/flags.ts';
import { causeLines } from './faces/cause-lines.ts';
import { finishedLines } from './faces/lines-text.ts';
import { freshFolder } from './fresh-folder.ts';
import { goOnHint } from './go-on.ts';
import { learnCommand } from './learn-command.ts';
import { showNextTests } from './next-tests-shown.ts';
import { faceOption } from './options.ts';
import { textOfFile } from './read-machine.ts';
import { usualScope } from './scope.ts';
import { type From, fromSession, orderFor, subjectNamed } from './search-from.ts';
import { showLines } from './show.ts';
import { toolVersion } from './version.ts';

/** At the machine with a port, far away with a saved session alone. Gives the exit code; throws ToolErrors. */
export async function runTroubleshoot(name: string, flags: TroubleshootFlags): Promise<0 | 1 | 2> {
  const resumed = resumedSession(flags);
  const from = flags.from === undefined ? undefined : fromSession(flags.from);
  if (from && flags.port === undefined && !resumed) return farAway(name, flags, from);
  if (flags.json)
    throw new ToolError(
      'wrong-usage',
      '--json goes with --from alone.',
      'At the machine, use --operator json.',
    );
  const faceName = faceOption(flags.operator, isTerminal());
  const port = portNamed(flags, resumed);
  const bench = port === 'bench' ? await import('./bench-wiring.ts') : undefined;
  const named = flags.machine === undefined ? undefined : textOfFile(flags.machine);
  const machineText =
    named ?? (resumed ? undefined : (from?.machineText ?? bench?.benchMachineWith(flags.fault ?? [])));
  const machine = machineOf(machineText, flags.machine, resumed);
  const subject = subjectNamed(name, machine);
  const search = resumed?.header().search ?? orderFor(subject, machine, from, flags.machineState);
  if (search.subject !== subject || (resumed && !resumed.header().search))
    throw new ToolError(
      'session-differs',
      `The session in this folder does not look for the cause at ${subject}.`,
      'Name another folder, or the switch it is about.',
    );
  const streamText = flags.stream === undefined ? from?.streamText : textOfFile(flags.stream);
  const startedUtc = new Date().toISOString();
  weighOnce(search, machine);
  const { source, time, face } = await atMachine(flags, {
    port,
    faceName,
    machine,
    streamText: streamText ?? resumed?.streamText(),
  });
  try {
    const { exit, facts, folder, report } = await commission({
      ...usualScope,
      source,
      time,
      face,
      folder: flags.out ?? freshFolder(startedUtc, machine),
      resume: flags.resume === true,
      machineText,
      streamText: resumed ? flags.stream && streamText : streamText,
      checks: ['press', 'open-wire'],
      only: [subject],
      search,
      learnCommand: learnCommand(port, flags, resumed),
      toolVersion: toolVersion(),
      startedUtc,
    });
    if (faceName === 'screen') {
      process.stdout.write(summaryText(buildRecord(facts)));
      for (const { facts: each } of facts.verdicts)
        if (each.cause) showLines(causeLines({ kind: 'cause', subject, cause: each.cause, restored: false }));
      showLines(finishedLines({ session: folder, report, exit }));
    }
    if (faceName !== 'json') showLines(goOnHint(facts, `troubleshoot ${subject}`, { folder, port }, flags));
    return exit;
  } finally {
    await face.close();
    await source.close();
  }
}

function farAway(name: string, flags: TroubleshootFlags, from: From): 0 | 1 | 2 {
  if (flags.fault && flags.fault.length > 0)
    throw new ToolError('wrong-usage', 'Faults are planted on the bench only.', 'Add --port bench.');
  const machine =
    flags.machine === undefined ? from.facts.machine : machineOf(textOfFile(flags.machine), flags.machine);
  const subject = subjectNamed(name, machine);
  const order = orderFor(subject, machine, from, flags.machineState);
  return showNextTests(order, machine, from.path, flags.json === true);
}

/** All that may be wrong is weighed before the port is opened: it takes a second or two, in which no report may wait. */
function weighOnce(order: SearchOrder, machine: Machine): void {
  const of = switchOf(machine, order.subject);
  if (of) beginSearch(order, { of, scene: { machine }, told: 'both' }, candidatesOf(machine, of));
}
