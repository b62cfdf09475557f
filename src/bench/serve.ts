import { createServer, type Server, type Socket } from 'node:net';
import { createInterface } from 'node:readline';
import type { Readable } from 'node:stream';
import type { Timekeeper } from '../model/source.ts';
import { ToolError } from '../model/tool-error.ts';
import type { Bench } from './bench.ts';
import { joinClient } from './client.ts';
import { handLine } from './hands.ts';
import { listening } from './listening.ts';
import { openPty } from './pty.ts';

export interface ServeOptions {
  /** `pty`, or `tcp://host:port`; port 0 takes a free one. */
  readonly serve: string;
  readonly bench: Bench;
  /** Real time; the bench runs on the same. */
  readonly time: Timekeeper;
  /** Hands, one JSON object a line; its end changes nothing. */
  readonly stdin: Readable;
  /** Takes `serving` first, then one answer for each hand. */
  readonly stdout: { write(text: string): unknown };
}

export interface Serving {
  /** As `--port` takes it. */
  readonly port: string;
  close(): Promise<void>;
}

/**
 * Serves the bench to other programs, as many as come, one after the other or at once. Rejects with a ToolError where the
 * address cannot be listened on or a pty cannot be made.
 */
export async function serveBench({ serve, bench, time, stdin, stdout }: ServeOptions): Promise<Serving> {
  const say = (object: object) => stdout.write(`${JSON.stringify(object)}\n`);
  const sockets = new Set<Socket>();
  const server = createServer((socket) => {
    sockets.add(socket);
    socket.on('close', () => sockets.delete(socket));
    socket.setNoDelay(true);
    joinClient(bench, socket);
  });
  const opened = serve === 'pty' ? await openPty(server, time) : await listenTcp(server, serve);
  const hands = createInterface({ input: stdin });
  hands.on('line', (line) => {
    if (line.trim() !== '') say(handLine(bench, line));
  });
  say({ kind: 'serving', port: opened.port });
  return {
    port: opened.port,
    async close() {
      hands.close();
      opened.close();
      for (const socket of sockets) socket.destroy();
      bench.shutDown();
      await new Promise((closed) => server.close(closed));
    },
  };
}

async function listenTcp(server: Server, address: string): Promise<{ port: string; close(): void }> {
  const [, host, port] = /^tcp:\/\/(\[[0-9a-f:]+\]|[^:/[\]]+):(\d{1,5})$/i.exec(address) ?? [];
  if (host === undefined || Number(port) > 65_535)
    throw new ToolError('wrong-usage', `Cannot serve on ${address}.`, 'Write pty, or tcp://127.0.0.1:0.');
  await listening(server, { host: host.replace(/^\[|\]$/g, ''), port: Number(port) }, address);
  const bound = server.address();
  const real = typeof bound === 'object' && bound ? bound.port : port;
  return { port: `tcp://${host}:${real}`, close() {} };
}
