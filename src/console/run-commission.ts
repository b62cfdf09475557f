import { ToolError } from '../model/tool-error.ts';
import { buildRecord } from '../report/build-record.ts';
import { summaryText } from '../report/summary-text.ts';
import { commission } from '../session/commission.ts';
import { atMachine, machineOf, portNamed, resumedSession } from './at-machine.ts';
import { isTerminal } from './choose-face.ts';
import type { CommissionFlags } from './commands/flags.ts';
import { finishedLines } from './faces/lines-text.ts';
import { freshFolder } from './fresh-folder.ts';
import { goOnHint } from './go-on.ts';
import { learnCommand } from './learn-command.ts';
import { type FaceName, faceOption } from './options.ts';
import { textOfFile } from './read-machine.ts';
import { scopeOf } from './scope.ts';
import { searchHints } from './search-hints.ts';
import { showLines } from './show.ts';
import { toolVersion } from './version.ts';

/** Everything is looked at before a port is opened or a folder made. Gives the exit code; throws ToolErrors. */
export async function runCommission(flags: CommissionFlags): Promise<0 | 1 | 2> {
  const faceName = faceOption(flags.operator, isTerminal());
  if (flags.ownLine) refuseOwnLineTo(faceName);
  const resumed = resumedSession(flags);
  const port = portNamed(flags, resumed);
  const bench = port === 'bench' ? await import('./bench-wiring.ts') : undefined;
  const named = flags.machine === undefined ? undefined : textOfFile(flags.machine);
  const machineText = named ?? (resumed ? undefined : bench?.benchMachineWith(flags.fault ?? []));
  const machine = machineOf(machineText, flags.machine, resumed);
  const streamText = flags.stream === undefined ? undefined : textOfFile(flags.stream);
  const scope = scopeOf(flags, machine, resumed?.header());
  const startedUtc = new Date().toISOString();
  const { source, time, face } = await atMachine(flags, {
    port,
    faceName,
    machine,
    streamText: streamText ?? resumed?.streamText(),
  });
  try {
    const { exit, facts, folder, report } = await commission({
      source,
      time,
      face,
      folder: flags.out ?? freshFolder(startedUtc, machine),
      resume: flags.resume === true,
      machineText,
      streamText,
      programText: flags.program === undefined ? undefined : textOfFile(flags.program),
      ...scope,
      ownLine: flags.ownLine,
      learnCommand: learnCommand(port, flags, resumed),
      toolVersion: toolVersion(),
      startedUtc,
    });
    if (faceName === 'screen') {
      process.stdout.write(summaryText(buildRecord(facts)));
      showLines(finishedLines({ session: folder, report, exit }));
    }
    if (faceName !== 'json')
      showLines([...goOnHint(facts, 'commission', { folder, port }, flags), ...searchHints(facts, folder)]);
    return exit;
  } finally {
    await face.close();
    await source.close();
  }
}

/** A program that answers in a person's place sends nothing to a machine. */
function refuseOwnLineTo(faceName: FaceName): void {
  if (faceName !== 'json') return;
  throw new ToolError(
    'wrong-usage',
    'A line of your own is typed and agreed to by a person: --own-line does not go with --operator json.',
    'Use --operator screen or lines.',
  );
}
