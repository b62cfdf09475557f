import { existsSync, mkdirSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { captureWriter } from '../transport/inline/capture-writer.ts';
import { Relay, type RelayNote } from '../transport/inline/relay.ts';
import { servePty } from '../transport/inline/serve-pty.ts';
import { serveAddress, serveTcp, staysHere } from '../transport/inline/serve-tcp.ts';
import { openPort } from '../transport/open-port.ts';
import { realTime } from '../transport/real-time.ts';
import { inlineWords } from '../words/inline-words.ts';
import { countOption } from './options.ts';
import { untilEnded } from './until-ended.ts';

export interface InlineFlags {
  readonly port?: string;
  readonly baud: string;
  readonly serve: string;
  readonly beside: string;
  readonly network?: boolean;
  readonly out?: string;
  readonly json?: boolean;
  readonly ownLine?: boolean;
}

/** Stands between the controller and the operator's program until it is told to end. */
export async function runInline(flags: InlineFlags): Promise<void> {
  const { port, out } = flags;
  if (flags.ownLine)
    throw new ToolError(
      'wrong-usage',
      'In line your own program commands the machine: a line typed here would cut in on it.',
      'Leave out --own-line, and send the line from your program.',
    );
  if (port === undefined || port === 'bench')
    throw new ToolError(
      'wrong-usage',
      'No port of a controller was named.',
      'Name it with --port; `tellwire ports` lists them.',
    );
  for (const address of [flags.serve, flags.beside]) refuseNetwork(address, flags.network === true);
  const controller = openPort(port, {
    baud: countOption('baud', flags.baud, 50, 20_000_000),
    time: realTime,
  });
  const file = resolve(out ?? freshCapture());
  mkdirSync(dirname(file), { recursive: true });
  if (existsSync(file))
    throw new ToolError(
      'folder-not-empty',
      `${visible(file)} is there already.`,
      'Name another file with --out.',
    );
  const say = flags.json === true ? sayJson : sayLine;
  const capture = await captureWriter(file, port, realTime);
  const relay = new Relay({ controller, capture, note: say });
  try {
    await relay.open();
    const join = (socket: Parameters<Relay['join']>[0]) => relay.join(socket);
    const program = flags.serve === 'pty' ? await servePty(join) : await serveTcp(flags.serve, join);
    const beside = await serveTcp(flags.beside, (socket) => relay.listen(socket));
    if (flags.json) sayJson({ kind: 'serving', program: program.port, beside: beside.port, capture: file });
    else {
      if (flags.network) process.stderr.write(`${inlineWords.network}\n`);
      for (const line of inlineWords.ready(program.port, beside.port, file))
        process.stdout.write(`${visible(line)}\n`);
    }
    await untilEnded();
    await relay.close();
    await Promise.all([program.close(), beside.close()]);
  } finally {
    await relay.close();
    await capture.close();
  }
  if (flags.json) sayJson({ kind: 'finished', ...relay.counts });
  else process.stdout.write(`${inlineWords.summary(relay.counts)}\n`);
}

function refuseNetwork(address: string, allowed: boolean): void {
  const host = serveAddress(address)?.host;
  if (host === undefined || staysHere(host) || allowed) return;
  throw new ToolError(
    'wrong-usage',
    `${visible(address)} can be reached from other computers: whoever reaches it commands the machine.`,
    'Serve on tcp://127.0.0.1:0, or say --network where that is what you want.',
  );
}

/** A name by the moment, in UTC. */
const freshCapture = (): string =>
  `captures/${new Date().toISOString().replace(/\.\d+/, '').replaceAll(/[-:]/g, '')}.log`;

const sayJson = (what: object): void => {
  process.stdout.write(`${JSON.stringify(what)}\n`);
};

const sayLine = (note: RelayNote): void => {
  process.stdout.write(`${visible(noteText(note))}\n`);
};

function noteText(note: RelayNote): string {
  switch (note.kind) {
    case 'controller-lost':
      return inlineWords['controller-lost'](note.why);
    case 'program-stuck':
      return inlineWords['program-stuck'](note.waiting);
    case 'not-sent':
      return inlineWords['not-sent'](note.bytes);
    default:
      return inlineWords[note.kind];
  }
}
