import { registered } from '../diagnose/checks/registry.ts';
import type { Machine } from '../model/machine.ts';
import type { Source, Timekeeper } from '../model/source.ts';
import { ToolError } from '../model/tool-error.ts';
import { commission } from '../session/commission.ts';
import { SessionFolder } from '../session/folder.ts';
import type { Face } from '../session/operator.ts';
import { realTime } from '../transport/real-time.ts';
import { isTerminal, makeFace, wantsColor } from './choose-face.ts';
import type { CommissionFlags } from './commands/flags.ts';
import { exitWords, verdictLines } from './faces/lines-text.ts';
import { freshFolder } from './fresh-folder.ts';
import { checksOption, countOption, type FaceName, faceOption, onlyOption, timeOption } from './options.ts';
import { machineIn, textOfFile } from './read-machine.ts';
import { showLines } from './show.ts';
import { endedBySignals } from './stop-signals.ts';
import { toolVersion } from './version.ts';

/** Everything is looked at before a port is opened or a folder made. Gives the exit code; throws ToolErrors. */
export async function runCommission(flags: CommissionFlags): Promise<0 | 1 | 2> {
  const faceName = faceOption(flags.operator, isTerminal());
  if (flags.stream !== undefined) {
    throw new ToolError(
      'wrong-usage',
      'Stream descriptions are not in this version; it reads the native status sentences.',
      'Leave out --stream and let the controller send the sentences of firmware-notes.',
    );
  }
  const resumed = resumedSession(flags);
  const port = flags.port ?? resumed?.header().port;
  if (port === undefined)
    throw new ToolError('wrong-usage', 'No port was named.', 'Add --port; tellwire ports lists them.');
  if (flags.fault.length > 0 && port !== 'bench')
    throw new ToolError(
      'wrong-usage',
      'Faults are planted on the bench only.',
      'Use --port bench, or leave out --fault.',
    );
  const bench = port === 'bench' ? await import('./bench-wiring.ts') : undefined;
  const named = flags.machine === undefined ? undefined : textOfFile(flags.machine);
  const machineText = named ?? (resumed ? undefined : bench?.benchMachineText);
  const machine = machineOf(machineText, flags.machine, resumed);
  const checks = checksOption(flags.checks, registered);
  const presses = countOption('presses', flags.presses, 1, 30);
  const restSeconds = timeOption('rest', flags.rest, 1, 600);
  const only = onlyOption(flags.only, machine);
  const startedUtc = new Date().toISOString();
  const folder = flags.out ?? freshFolder(startedUtc, machine);
  const baud = countOption('baud', flags.baud, 50, 20_000_000);
  const wired = bench
    ? await bench.benchForPerson(flags.fault, faceName, { machine, color: wantsColor(flags.color) })
    : await portForPerson(port, baud, faceName, { machine, color: wantsColor(flags.color) });
  const face = endedBySignals(wired.face);
  try {
    const outcome = await commission({
      source: wired.source,
      time: wired.time,
      face,
      folder,
      resume: flags.resume === true,
      machineText,
      checks,
      presses,
      restSeconds,
      only,
      toolVersion: toolVersion(),
      startedUtc,
    });
    if (faceName === 'screen') {
      const { facts } = outcome;
      showLines(facts.verdicts.flatMap((each) => verdictLines(each, facts.machine)));
      showLines(['', `Report: ${outcome.report}`, `Exit ${outcome.exit}: ${exitWords[outcome.exit]}`]);
    }
    return outcome.exit;
  } finally {
    await face.close();
    await wired.source.close();
  }
}

/** The session that is gone on with, where there is one in the folder. */
function resumedSession({ resume, out }: CommissionFlags): SessionFolder | undefined {
  if (!resume) return undefined;
  if (out === undefined) {
    throw new ToolError(
      'wrong-usage',
      'Which session is to go on is not said.',
      'Name its folder with --out.',
    );
  }
  const folder = new SessionFolder(out);
  return folder.exists ? folder : undefined;
}

function machineOf(text: string | undefined, path: string | undefined, resumed?: SessionFolder): Machine {
  const own = text ?? resumed?.machineText();
  if (own !== undefined) return machineIn(own, path ?? 'machine.yaml');
  throw new ToolError(
    'wrong-usage',
    'No machine file was named.',
    'Add --machine; tellwire check --new machine prints a starter.',
  );
}

interface Wired {
  readonly source: Source;
  readonly time: Timekeeper;
  readonly face: Face;
}

async function portForPerson(
  port: string,
  baud: number,
  face: FaceName,
  wishes: { readonly machine: Machine; readonly color: boolean },
): Promise<Wired> {
  const { openPort } = await import('../transport/open-port.ts');
  const source = openPort(port, { baud, time: realTime });
  return { source, time: realTime, face: await makeFace(face, wishes) };
}
