import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import type { Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Timekeeper } from '../model/source.ts';
import { ToolError } from '../model/tool-error.ts';
import { ms } from '../model/units.ts';
import { listening } from './listening.ts';

const lookEvery = ms(20);
const longestWait = ms(5000);
/** A relay that ends sooner than this did not end because a client went away. */
const shortestLife = ms(200);
const mostFailures = 5;

/**
 * A pty under a name that stays, in front of the server. Node opens no pty itself, so socat does: it waits until a client has
 * opened the far side, only then connects to the server, so that no client is met by old reports, and is started anew when the
 * client has gone. Rejects with a ToolError where there is no socat.
 */
export async function openPty(server: Server, time: Timekeeper): Promise<{ port: string; close(): void }> {
  if (!runs('socat', ['-V']))
    throw new ToolError(
      'program-missing',
      'There is no socat here, which makes the pty.',
      'Install socat, or serve on tcp://127.0.0.1:0.',
    );
  const folder = mkdtempSync(join(tmpdir(), 'tellwire-bench-'));
  const port = join(folder, 'port');
  const socket = join(folder, 'socket');
  await listening(server, { path: socket }, 'its own socket');
  const relay = new Relay(port, socket, time);
  const close = () => {
    relay.stop();
    rmSync(folder, { recursive: true, force: true });
  };
  try {
    await relay.start();
  } catch (error) {
    close();
    server.close();
    throw error;
  }
  return { port, close };
}

/** Keeps one socat running between the pty and the server. */
class Relay {
  private readonly command: readonly string[];
  private readonly port: string;
  private readonly time: Timekeeper;
  private child: ChildProcess | undefined;
  private failures = 0;
  private said = '';

  constructor(port: string, socket: string, time: Timekeeper) {
    const socat = ['socat', `PTY,link=${port},rawer,wait-slave,pty-interval=0.02`, `UNIX-CONNECT:${socket}`];
    // Waiting for a client it would outlive a bench that was killed; where the system can, it is told to end with it.
    const tied = ['setpriv', '--pdeathsig', 'TERM'];
    this.command = runs('setpriv', ['--pdeathsig', 'TERM', 'true']) ? [...tied, ...socat] : socat;
    this.port = port;
    this.time = time;
  }

  /** Resolves when the pty is there. */
  async start(): Promise<void> {
    this.spawn();
    const until = this.time.now() + longestWait;
    while (!existsSync(this.port)) {
      if (!this.child || this.time.now() > until)
        throw new ToolError(
          'port-failed',
          `socat made no pty: ${this.said.trim() || 'it said nothing'}`,
          'Serve on tcp://127.0.0.1:0.',
        );
      await new Promise<void>((then) => this.time.after(lookEvery, then));
    }
  }

  stop(): void {
    const { child } = this;
    this.child = undefined;
    child?.kill();
  }

  private spawn(): void {
    const [program = '', ...rest] = this.command;
    const startedAt = this.time.now();
    const child = spawn(program, rest, { stdio: ['ignore', 'ignore', 'pipe'] });
    this.child = child;
    child.stderr.on('data', (bytes: Buffer) => {
      this.said = (this.said + bytes.toString('latin1')).slice(-500);
    });
    child.on('error', (error) => {
      this.said = error.message;
    });
    child.on('close', () => {
      if (this.child !== child) return;
      this.child = undefined;
      this.failures = this.time.now() - startedAt < shortestLife ? this.failures + 1 : 0;
      if (this.failures < mostFailures) this.spawn();
    });
  }
}

const runs = (program: string, args: readonly string[]): boolean =>
  spawnSync(program, args, { stdio: 'ignore' }).status === 0;
