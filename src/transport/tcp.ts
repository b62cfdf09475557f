import { connect, type Socket } from 'node:net';
import type { Timekeeper } from '../model/source.ts';
import { ToolError } from '../model/tool-error.ts';
import { ms } from '../model/units.ts';
import { type Connection, type ConnectionEvents, type KeptSource, keptOpen } from './kept-open.ts';

export interface TcpAddress {
  readonly host: string;
  readonly port: number;
}

/** `tcp://host:port`, with an IPv6 address in brackets; undefined where it is not one. */
export function tcpAddress(text: string): TcpAddress | undefined {
  const found = /^tcp:\/\/(?:\[([0-9a-fA-F:.]+)\]|([A-Za-z0-9._-]+)):(\d{1,5})$/.exec(text);
  const host = found?.[1] ?? found?.[2];
  const port = Number(found?.[3]);
  return host === undefined || port < 1 || port > 65_535 ? undefined : { host, port };
}

/** A tcp peer as a source of bytes: a serial server, or the bench of another process. */
export function tcpSource(text: string, { time }: { readonly time: Timekeeper }): KeptSource {
  const address = tcpAddress(text);
  return keptOpen(text, time, (events) => {
    if (address === undefined)
      throw new ToolError('wrong-usage', `${text} is no tcp address.`, 'Write tcp://host:port.');
    return opened(text, address, time, events);
  });
}

const openWithin = ms(5000);

function opened(
  text: string,
  { host, port }: TcpAddress,
  time: Timekeeper,
  events: ConnectionEvents,
): Promise<Connection> {
  return new Promise((resolve, reject) => {
    const socket = connect({ host, port, noDelay: true, keepAlive: true, keepAliveInitialDelay: 1000 });
    const stopWaiting = time.after(openWithin, () => socket.destroy(new Error('no answer within 5 s')));
    let isOpen = false;
    let why = 'the other side closed the connection';
    socket.on('error', (cause: NodeJS.ErrnoException) => {
      why = cause.message;
      stopWaiting();
      if (!isOpen) reject(tcpError(text, cause));
    });
    socket.on('connect', () => {
      stopWaiting();
      isOpen = true;
      resolve(connection(socket));
    });
    socket.on('data', (bytes: Buffer) => events.bytes(Uint8Array.from(bytes)));
    // Half-closed is lost: nothing more will be heard.
    socket.on('end', () => socket.destroy());
    socket.on('close', () => {
      if (isOpen) events.lost(why);
    });
  });
}

function connection(socket: Socket): Connection {
  let written: Promise<void> = Promise.resolve();
  return {
    write(bytes) {
      // The callback also comes, with an error, where the socket is destroyed first.
      written = new Promise((resolve) => socket.write(bytes, () => resolve()));
    },
    flushed: () => written,
    close: () =>
      new Promise((resolve) => {
        if (socket.destroyed) return resolve();
        socket.once('close', () => resolve());
        // `destroySoon` lets what was written leave first.
        socket.destroySoon();
      }),
  };
}

function tcpError(text: string, cause: NodeJS.ErrnoException): ToolError {
  const { code } = cause;
  if (code === 'ECONNREFUSED' || code === 'ENOTFOUND' || code === 'EAI_AGAIN')
    return new ToolError(
      'port-missing',
      code === 'ECONNREFUSED' ? `Nothing listens at ${text}.` : `The host of ${text} is not known.`,
      'Start the serial server or the bench there, and check host and port; `tellwire ports` lists local serial ports.',
      cause,
    );
  if (code === 'EACCES' || code === 'EPERM')
    return new ToolError(
      'port-not-permitted',
      `This user may not connect to ${text}.`,
      'Check the firewall of this computer.',
      cause,
    );
  return new ToolError(
    'port-failed',
    `${text} could not be reached: ${cause.message}`,
    'Check the network and the address; `tellwire ports` lists local serial ports.',
    cause,
  );
}
