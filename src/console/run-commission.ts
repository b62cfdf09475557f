import type { Machine } from '../model/machine.ts';
import type { Source, Timekeeper } from '../model/source.ts';
import { ToolError } from '../model/tool-error.ts';
import { buildRecord } from '../report/build-record.ts';
import { summaryText } from '../report/summary-text.ts';
import { commission } from '../session/commission.ts';
import { SessionFolder } from '../session/folder.ts';
import type { Face } from '../session/operator.ts';
import { realTime } from '../transport/real-time.ts';
import { isTerminal, makeFace, wantsColor } from './choose-face.ts';
import type { CommissionFlags } from './commands/flags.ts';
import { finishedLines } from './faces/lines-text.ts';
import { freshFolder } from './fresh-folder.ts';
import { letPass } from './let-pass.ts';
import { countOption, type FaceName, faceOption, portOption } from './options.ts';
import { machineIn, textOfFile } from './read-machine.ts';
import { descriptionIn } from './read-stream.ts';
import { scopeOf } from './scope.ts';
import { searchHints } from './search-hints.ts';
import { showLines } from './show.ts';
import { endedBySignals } from './stop-signals.ts';
import { toolVersion } from './version.ts';

/** Everything is looked at before a port is opened or a folder made. Gives the exit code; throws ToolErrors. */
export async function runCommission(flags: CommissionFlags): Promise<0 | 1 | 2> {
  const faceName = faceOption(flags.operator, isTerminal());
  const resumed = resumedSession(flags);
  const port = portNamed(flags, resumed);
  const bench = port === 'bench' ? await import('./bench-wiring.ts') : undefined;
  const named = flags.machine === undefined ? undefined : textOfFile(flags.machine);
  const machineText = named ?? (resumed ? undefined : bench?.benchMachineWith(flags.fault ?? []));
  const machine = machineOf(machineText, flags.machine, resumed);
  const streamText = flags.stream === undefined ? undefined : textOfFile(flags.stream);
  const ownStream = streamText ?? resumed?.streamText();
  const described =
    ownStream === undefined ? undefined : descriptionIn(ownStream, flags.stream ?? 'stream.yaml');
  await letPass(described?.request, flags.allowRequest, faceName);
  const scope = scopeOf(flags, machine, resumed?.header());
  const baud = countOption('baud', flags.baud, 50, 20_000_000);
  const startedUtc = new Date().toISOString();
  const wishes = { machine, color: wantsColor(flags.color) };
  const { source, time, face } = bench
    ? await bench.benchForPerson(flags.fault ?? [], faceName, wishes, flags.speak)
    : await portForPerson(port, baud, faceName, wishes);
  const shown = endedBySignals(face);
  try {
    const { exit, facts, folder, report } = await commission({
      source,
      time,
      face: shown,
      folder: flags.out ?? freshFolder(startedUtc, machine),
      resume: flags.resume === true,
      machineText,
      streamText,
      programText: flags.program === undefined ? undefined : textOfFile(flags.program),
      ...scope,
      toolVersion: toolVersion(),
      startedUtc,
    });
    if (faceName === 'screen') {
      process.stdout.write(summaryText(buildRecord(facts)));
      showLines(finishedLines({ session: folder, report, exit }));
    }
    if (faceName !== 'json') showLines(searchHints(facts, folder));
    return exit;
  } finally {
    await shown.close();
    await source.close();
  }
}

/** As named, or where the session that is gone on with had it. */
export function portNamed({ port, fault = [] }: CommissionFlags, resumed: SessionFolder | undefined): string {
  const found = portOption(port ?? resumed?.header().port);
  if (fault.length > 0 && found !== 'bench')
    throw new ToolError(
      'wrong-usage',
      'Faults are planted on the bench only.',
      'Use --port bench, or leave out --fault.',
    );
  return found;
}

/** The session that is gone on with, where there is one in the folder. */
export function resumedSession({ resume, out }: CommissionFlags): SessionFolder | undefined {
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

export function machineOf(
  text: string | undefined,
  path: string | undefined,
  resumed?: SessionFolder,
): Machine {
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

export async function portForPerson(
  port: string,
  baud: number,
  face: FaceName,
  wishes: { readonly machine: Machine; readonly color: boolean },
): Promise<Wired> {
  const { openPort } = await import('../transport/open-port.ts');
  const source = openPort(port, { baud, time: realTime });
  return { source, time: realTime, face: await makeFace(face, wishes) };
}
