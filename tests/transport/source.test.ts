import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Server, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { MockBinding, type MockPortBinding } from '@serialport/binding-mock';
import { describe } from 'vitest';
import { realTime } from '../../src/transport/real-time.ts';
import { serialSource } from '../../src/transport/serial.ts';
import type { SerialBinding } from '../../src/transport/serial-binding.ts';
import { tcpSource } from '../../src/transport/tcp.ts';
import { describeWithSocat, plugIn } from './socat.ts';
import { type Rig, sourceContract } from './source-contract.ts';

const time = realTime;

/** @serialport/binding-mock knows no pulled cable: here its reads fail as the native ones do. */
async function mockRig(): Promise<Rig> {
  const path = '/dev/mock';
  const create = () => MockBinding.createPort(path, { record: true, maxReadSize: 7 });
  let port: MockPortBinding | undefined;
  let recorded: readonly Buffer[] = [];
  let pull: (cause: Error) => void = () => {};
  const binding: SerialBinding = {
    list: () => MockBinding.list(),
    async open(options) {
      const handle = await MockBinding.open(options);
      port = handle;
      const pulled = new Promise<never>((_, reject) => {
        pull = reject;
      });
      pulled.catch(() => {});
      return {
        read: (...request) => Promise.race([handle.read(...request), pulled]),
        write: (bytes) => handle.write(bytes),
        close: () => handle.close(),
      };
    },
  };
  create();
  return {
    source: () => serialSource(path, { baud: 115_200, time, binding }),
    send: (bytes) => port?.emitData(Buffer.from(bytes)),
    received: () => Buffer.concat([...recorded, port?.recording ?? Buffer.alloc(0)]),
    async unplug() {
      recorded = [...recorded, port?.recording ?? Buffer.alloc(0)];
      MockBinding.reset();
      pull(new Error('EIO: i/o error, read'));
    },
    async plugIn() {
      create();
    },
    async end() {
      MockBinding.reset();
    },
  };
}

async function ptyRig(): Promise<Rig> {
  const folder = mkdtempSync(join(tmpdir(), 'tellwire-pty-'));
  const path = join(folder, 'port');
  const received: Buffer[] = [];
  const plug = async () => {
    const plugged = await plugIn(path);
    plugged.far.stdout?.on('data', (bytes: Buffer) => received.push(bytes));
    return plugged;
  };
  let cable = await plug();
  return {
    source: () => serialSource(path, { baud: 115_200, time }),
    send: (bytes) => cable.far.stdin?.write(bytes),
    received: () => Buffer.concat(received),
    unplug: () => cable.unplug(),
    async plugIn() {
      cable = await plug();
    },
    async end() {
      await cable.unplug();
      rmSync(folder, { recursive: true });
    },
  };
}

async function tcpRig(): Promise<Rig> {
  const received: Buffer[] = [];
  let peers: Socket[] = [];
  let number = 0;
  const listen = () =>
    new Promise<Server>((resolve) => {
      const server = createServer((socket) => {
        peers.push(socket);
        socket.on('data', (bytes) => received.push(bytes));
        socket.on('error', () => {});
      });
      server.listen(number, '127.0.0.1', () => {
        const address = server.address();
        number = typeof address === 'object' && address !== null ? address.port : 0;
        resolve(server);
      });
    });
  let server = await listen();
  const unplug = () =>
    new Promise<void>((resolve) => {
      for (const peer of peers) peer.destroy();
      peers = [];
      server.close(() => resolve());
    });
  return {
    source: () => tcpSource(`tcp://127.0.0.1:${number}`, { time }),
    send: (bytes) => peers.at(-1)?.write(bytes),
    received: () => Buffer.concat(received),
    unplug,
    async plugIn() {
      server = await listen();
    },
    end: unplug,
  };
}

describe('a port on the simulated binding', () => sourceContract(mockRig));
describeWithSocat('a port on the native binding over a pseudo terminal', () => sourceContract(ptyRig));
describe('a port on tcp', () => sourceContract(tcpRig));
