import { appendFileSync, existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Source } from '../model/source.ts';
import { ToolError } from '../model/tool-error.ts';
import { baudByListening } from '../session/learning/baud.ts';
import { remarksOf, summaryLines } from '../session/learning/remarks.ts';
import { runLearning } from '../session/learning/run.ts';
import { openPort } from '../transport/open-port.ts';
import { realTime } from '../transport/real-time.ts';
import { writeDescription } from '../transport/stream/description/write.ts';
import { tcpAddress } from '../transport/tcp.ts';
import { writtenLine } from '../words/learn-words.ts';
import { isTerminal, makeFace, wantsColor } from './choose-face.ts';
import type { LearnFlags } from './commands/flags.ts';
import { letPass } from './let-pass.ts';
import { countOption, faceOption, portOption, timeOption } from './options.ts';
import { machineIn, textOfFile } from './read-machine.ts';
import { requestOption } from './read-stream.ts';
import { showLines } from './show.ts';
import { endedBySignals } from './stop-signals.ts';
import { toolVersion } from './version.ts';

/** 0 everything bound and the preview confirmed; 2 something is not, or it was stopped. */
export async function runLearn(flags: LearnFlags): Promise<0 | 2> {
  const { out } = flags;
  const port = portOption(flags.port);
  const request = requestOption(
    flags.request,
    Math.round(timeOption('every', flags.every, 0.02, 600) * 1000),
  );
  const bench = port === 'bench' ? await import('./bench-wiring.ts') : undefined;
  const text = flags.machine === undefined ? bench?.benchMachineText : textOfFile(flags.machine);
  if (text === undefined)
    throw new ToolError(
      'wrong-usage',
      'No machine file was named.',
      'Add --machine; `tellwire check --new machine` prints a starter.',
    );
  const machine = machineIn(text, flags.machine ?? 'the bench');
  if (existsSync(out) && readdirSync(out).length > 0)
    throw new ToolError('folder-not-empty', `The folder ${out} is not empty.`, 'Name another with --out.');
  const faceName = faceOption(flags.operator ?? 'lines', isTerminal());
  await letPass(request, flags.allowRequest, faceName);
  const wishes = { machine, color: wantsColor(flags.color) };
  const wired = bench
    ? await bench.benchForPerson([], faceName, wishes, flags.speak)
    : { source: await portAt(port, flags.baud), time: realTime, face: await makeFace(faceName, wishes) };
  const face = endedBySignals(wired.face);
  mkdirSync(out, { recursive: true });
  let requests = 0;
  try {
    const outcome = await runLearning({
      source: wired.source,
      time: wired.time,
      face,
      machine,
      request,
      capture: (line) => {
        if (/^\S+ tx /.test(line)) requests++;
        appendFileSync(join(out, 'capture.log'), line);
      },
    });
    const file = join(out, 'stream.yaml');
    writeFileSync(file, writeDescription(outcome.description, remarksOf(outcome, toolVersion())));
    const isWhole =
      outcome.accepted &&
      outcome.description.inputs.length === machine.inputs.length &&
      outcome.axesOpen.length === 0;
    const exit = isWhole ? 0 : 2;
    if (faceName === 'json') face.show({ kind: 'finished', session: out, report: file, exit });
    else showLines([...summaryLines(outcome), writtenLine(requests, request), `Written: ${file}`]);
    return exit;
  } finally {
    await face.close();
    await wired.source.close();
  }
}

async function portAt(port: string, baud: string | undefined): Promise<Source> {
  const open = (rate: number) => openPort(port, { baud: rate, time: realTime });
  if (baud !== undefined) return open(countOption('baud', baud, 50, 20_000_000));
  return tcpAddress(port) !== undefined ? open(115200) : open(await baudByListening(open, realTime));
}
