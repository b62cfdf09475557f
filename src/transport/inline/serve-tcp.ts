import { createServer, type Socket } from 'node:net';
import { ToolError } from '../../model/tool-error.ts';

/** Where another program finds the line. */
export interface Served {
  /** As a `--port` takes it. */
  readonly port: string;
  close(): Promise<void>;
}

/** `tcp://host:port` to serve on; port 0 takes a free one. Undefined where it is not one. */
export function serveAddress(text: string): { readonly host: string; readonly port: number } | undefined {
  const [, host, port] = /^tcp:\/\/(\[[0-9a-f:]+\]|[^:/[\]]+):(\d{1,5})$/i.exec(text) ?? [];
  if (host === undefined || Number(port) > 65_535) return undefined;
  return { host: host.replace(/^\[|\]$/g, ''), port: Number(port) };
}

/** Whoever is on this computer, and nobody else, can reach such an address (RFC 1122, RFC 4291). */
export const staysHere = (host: string): boolean => /^127(\.\d{1,3}){3}$/.test(host) || host === '::1';

/** Rejects with a ToolError where the address cannot be listened on. */
export async function serveTcp(text: string, joined: (socket: Socket) => void): Promise<Served> {
  const address = serveAddress(text);
  if (address === undefined)
    throw new ToolError('wrong-usage', `Cannot serve on ${text}.`, 'Write pty, or tcp://127.0.0.1:0.');
  const server = createServer(joined);
  await new Promise<void>((open, fail) => {
    server.once('error', (cause) =>
      fail(
        new ToolError(
          'port-failed',
          `Cannot serve on ${text}: ${cause.message}`,
          'Choose another port.',
          cause,
        ),
      ),
    );
    server.listen(address, open);
  });
  const bound = server.address();
  const port = typeof bound === 'object' && bound ? bound.port : address.port;
  const host = address.host.includes(':') ? `[${address.host}]` : address.host;
  return {
    port: `tcp://${host}:${port}`,
    close: () =>
      new Promise((closed) => {
        server.close(() => closed());
      }),
  };
}
