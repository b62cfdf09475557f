import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { ToolError } from '../../model/tool-error.ts';
import type { Served } from './serve-tcp.ts';

/** How often a pty is made anew after its program left. */
const againAfter = 50;
const madeWithin = 5000;

/**
 * A pty under one lasting name, for programs that know serial ports only. Node opens no pty, so socat does, and is started anew
 * each time the program has closed it. Rejects with a ToolError where there is no socat.
 */
export async function servePty(joined: (socket: Socket) => void): Promise<Served> {
  if (spawnSync('socat', ['-V'], { stdio: 'ignore' }).status !== 0)
    throw new ToolError(
      'program-missing',
      'There is no socat here, which makes the pty.',
      'Install socat, or serve on tcp://127.0.0.1:0.',
    );
  const folder = mkdtempSync(join(tmpdir(), 'tellwire-inline-'));
  const port = join(folder, 'port');
  const inner = join(folder, 'socket');
  const server = createServer(joined);
  await new Promise<void>((open) => server.listen(inner, open));
  let child: ChildProcess | undefined;
  let open = true;
  const make = () => {
    if (!open) return;
    child = spawn('socat', [`PTY,link=${port},rawer,wait-slave,pty-interval=0.02`, `UNIX-CONNECT:${inner}`], {
      stdio: 'ignore',
    });
    child.once('close', () => setTimeout(make, againAfter));
  };
  make();
  for (let waited = 0; !existsSync(port) && waited < madeWithin; waited += 20) await pause(20);
  const close = async () => {
    open = false;
    child?.kill();
    await new Promise((closed) => server.close(closed));
    rmSync(folder, { recursive: true, force: true });
  };
  if (existsSync(port)) return { port, close };
  await close();
  throw new ToolError('port-failed', 'socat made no pty.', 'Serve on tcp://127.0.0.1:0.');
}
