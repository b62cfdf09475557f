import type { Server } from 'node:net';
import { ToolError } from '../model/tool-error.ts';

/** Resolves once the server listens; rejects with a ToolError that says why it cannot. */
export async function listening(
  server: Server,
  on: { readonly host: string; readonly port: number } | { readonly path: string },
  called: string,
): Promise<void> {
  await new Promise<void>((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      const busy = error.code === 'EADDRINUSE';
      const code = busy ? 'port-busy' : error.code === 'EACCES' ? 'port-not-permitted' : 'port-failed';
      const found = busy
        ? `${called} is taken by another program.`
        : `Cannot listen on ${called}: ${error.message}.`;
      reject(new ToolError(code, found, 'Take another address, or port 0 for a free one.', error));
    });
    server.listen(on, resolve);
  });
}
