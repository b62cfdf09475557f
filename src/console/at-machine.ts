import type { Machine } from '../model/machine.ts';
import type { Source, Timekeeper } from '../model/source.ts';
import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { SessionFolder } from '../session/folder.ts';
import type { Face } from '../session/operator.ts';
import { realTime } from '../transport/real-time.ts';
import { makeFace, wantsColor } from './choose-face.ts';
import type { CommissionFlags } from './commands/flags.ts';
import { letPass } from './let-pass.ts';
import { countOption, type FaceName, portOption } from './options.ts';
import { machineIn } from './read-machine.ts';
import { descriptionIn } from './read-stream.ts';
import { endedBySignals } from './stop-signals.ts';

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

/** The session that is gone on with. Where there is none a machine file begins one: whoever starts by a script need not look whether it began before. */
export function resumedSession({ resume, out, machine }: CommissionFlags): SessionFolder | undefined {
  if (!resume) return undefined;
  if (out === undefined) {
    throw new ToolError(
      'wrong-usage',
      'Which session is to go on is not said.',
      'Name its folder with --out.',
    );
  }
  const folder = new SessionFolder(out);
  if (folder.exists) return folder;
  if (machine !== undefined) return undefined;
  throw new ToolError(
    'file-missing',
    `There is no session in ${visible(out)}.`,
    'Name the folder of the session that is to go on, or begin a new one without --resume.',
  );
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
    'Add --machine; `tellwire check --new machine` prints a starter.',
  );
}

export interface AtMachine {
  readonly source: Source;
  readonly time: Timekeeper;
  readonly face: Face;
}

/** A person at a face and a port, or at the bench. The stream's own request is let pass first; nothing has been opened yet. */
export async function atMachine(
  flags: CommissionFlags,
  at: {
    readonly port: string;
    readonly faceName: FaceName;
    readonly machine: Machine;
    /** The stream description in use; undefined: the native sentences. */
    readonly streamText: string | undefined;
  },
): Promise<AtMachine> {
  const { port, faceName, machine, streamText } = at;
  const described =
    streamText === undefined ? undefined : descriptionIn(streamText, flags.stream ?? 'stream.yaml');
  await letPass(described?.request, flags.allowRequest, faceName);
  const baud = countOption('baud', flags.baud, 50, 20_000_000);
  const wishes = { machine, color: wantsColor(flags.color) };
  if (port === 'bench') {
    const bench = await import('./bench-wiring.ts');
    const wired = await bench.benchForPerson(flags.fault ?? [], faceName, wishes, flags.speak);
    return { ...wired, face: endedBySignals(wired.face) };
  }
  const { openPort } = await import('../transport/open-port.ts');
  const source = openPort(port, { baud, time: realTime });
  return { source, time: realTime, face: endedBySignals(await makeFace(faceName, wishes)) };
}
