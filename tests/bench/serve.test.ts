import { closeSync, constants, existsSync, openSync, readSync, realpathSync } from 'node:fs';
import { connect, createServer, type Socket } from 'node:net';
import { PassThrough } from 'node:stream';
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, describe, expect, it } from 'vitest';
import { Bench } from '../../src/bench/bench.ts';
import { type Serving, serveBench } from '../../src/bench/serve.ts';
import { realTime as time } from '../../src/transport/real-time.ts';
import { describeWithSocat } from '../transport/socat.ts';

let serving: Serving | undefined;
afterEach(async () => {
  await serving?.close();
  serving = undefined;
});

async function serve(address: string) {
  const stdin = new PassThrough();
  const said: { kind: string; port?: string }[] = [];
  const stdout = { write: (text: string) => said.push(JSON.parse(text)) };
  const bench = new Bench(time);
  serving = await serveBench({ serve: address, bench, time, stdin, stdout });
  const hand = async (line: string) => {
    const before = said.length;
    stdin.write(`${line}\n`);
    await until(() => said.length > before);
    return said.at(-1);
  };
  return { port: serving.port, said, hand, stdin };
}

async function until(met: () => boolean): Promise<void> {
  for (const end = Date.now() + 8000; !met(); await pause(10))
    if (Date.now() > end) throw new Error('waited in vain');
}

/** A client that collects what it hears. */
async function dial(port: string): Promise<{ socket: Socket; heard: () => string }> {
  const [, host = '', number] = /^tcp:\/\/(.*):(\d+)$/.exec(port) ?? [];
  const socket = connect(Number(number), host);
  let heard = '';
  socket.on('data', (bytes) => {
    heard += bytes.toString('latin1');
  });
  socket.on('error', () => {});
  await new Promise((resolve) => socket.once('connect', resolve));
  return { socket, heard: () => heard };
}

describe('the bench on tcp', () => {
  it('says the real port where a free one was asked for', async () => {
    const { port, said } = await serve('tcp://127.0.0.1:0');
    expect(port).toMatch(/^tcp:\/\/127\.0\.0\.1:[1-9]\d*$/);
    expect(said).toEqual([{ kind: 'serving', port }]);
  });

  it('declares itself to each client that comes, one after the other or at once, and reports a hundred times a second', async () => {
    const { port } = await serve('tcp://127.0.0.1:0');
    const first = await dial(port);
    const second = await dial(port);
    await until(() => first.heard().split('PTWRS').length > 50 && second.heard().includes('PTWRS'));
    expect(first.heard()).toMatch(/^\$PTWRD,/);
    expect(second.heard()).toMatch(/^\$PTWRD,/);
    first.socket.destroy();
    const third = await dial(port);
    await until(() => third.heard().includes('PTWRS'));
    expect(third.heard()).toMatch(/^\$PTWRD,/);
    second.socket.resetAndDestroy();
    third.socket.destroy();
    await until(() => true);
  });

  it('does what hands on its input say, and the stream shows it', async () => {
    const { port, hand } = await serve('tcp://127.0.0.1:0');
    const { heard, socket } = await dial(port);
    expect(await hand('{"do":"press","switch":"x-home"}')).toMatchObject({ kind: 'did', do: 'press' });
    await until(() => heard().includes(',HLLLLLLL,10000000,'));
    expect(await hand('nonsense')).toMatchObject({ kind: 'wrong' });
    await hand('{"do":"release","switch":"x-home"}');
    await until(() => heard().lastIndexOf(',LLLLLLLL,') > heard().lastIndexOf(',HLLLLLLL,'));
    socket.destroy();
  });

  it('goes on when its input of hands ends', async () => {
    const { port, stdin } = await serve('tcp://127.0.0.1:0');
    stdin.end();
    await pause(50);
    const { heard, socket } = await dial(port);
    await until(() => heard().includes('PTWRS'));
    socket.destroy();
  });

  it('answers a request', async () => {
    const { port, hand } = await serve('tcp://127.0.0.1:0');
    const { heard, socket } = await dial(port);
    await until(() => heard().includes('PTWRS'));
    await hand('{"do":"fault","fault":"slow-stream"}');
    socket.write('$PTWRQ*50\r\n');
    await until(() => heard().split('$PTWRD').length === 3);
    socket.destroy();
  });

  it.each(['tcp://127.0.0.1', 'tcp://127.0.0.1:99999', 'udp://x:1', '/dev/ttyS0'])(
    'refuses %s',
    async (address) => {
      await expect(serve(address)).rejects.toMatchObject({
        code: 'wrong-usage',
        tryNext: expect.stringContaining('tcp://'),
      });
    },
  );

  it('says when the port is taken', async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
    const taken = other.address();
    if (typeof taken !== 'object' || !taken) throw new Error('no port');
    await expect(serve(`tcp://127.0.0.1:${taken.port}`)).rejects.toMatchObject({ code: 'port-busy' });
    other.close();
  });
});

/** Opens the device as a program would and reads what comes within a while. */
async function readDevice(port: string, enough: (text: string) => boolean): Promise<string> {
  const device = openSync(port, constants.O_RDWR | constants.O_NOCTTY | constants.O_NONBLOCK);
  const bytes = Buffer.alloc(65_536);
  let text = '';
  try {
    await until(() => {
      try {
        text += bytes.toString('latin1', 0, readSync(device, bytes));
      } catch (error) {
        if ((error as NodeJS.ErrnoException).code !== 'EAGAIN') throw error;
      }
      return enough(text);
    });
  } finally {
    closeSync(device);
  }
  return text;
}

describeWithSocat('the bench on a pty', () => {
  it('meets each client with its declaration and no old reports, however long it waited and however often it comes again', async () => {
    const { port } = await serve('pty');
    for (let client = 0; client < 3; client++) {
      await pause(300);
      await until(() => existsSync(port));
      const text = await readDevice(port, (heard) => heard.split('PTWRS').length > 20);
      expect(text).toMatch(/^\$PTWRD,/);
      const clocks = [...text.matchAll(/PTWRS,\d+,(\d+),/g)].map(([, ms]) => Number(ms));
      // Twenty reports at 100 Hz span 190 ms: anything kept from before the opening would stretch them.
      expect((clocks[19] ?? 0) - (clocks[0] ?? 0)).toBeLessThan(400);
    }
  });

  it('is a terminal device', async () => {
    const { port } = await serve('pty');
    expect(realpathSync(port)).toMatch(/^\/dev\//);
  });

  it('takes hands while no client is there', async () => {
    const { port, hand } = await serve('pty');
    await pause(200);
    expect(await hand('{"do":"press","switch":"probe"}')).toMatchObject({ kind: 'did' });
    await pause(50);
    const text = await readDevice(port, (heard) => heard.split('PTWRS').length > 3);
    expect(text).toContain(',LLLLLHLL,00000100,');
  });

  it('leaves nothing behind when it is closed', async () => {
    const { port } = await serve('pty');
    await serving?.close();
    serving = undefined;
    expect(existsSync(port)).toBe(false);
  });
});

describe('a pty where there is no socat', () => {
  it('is refused with a plain word that names tcp', async () => {
    const path = process.env['PATH'];
    process.env['PATH'] = '';
    try {
      await expect(serve('pty')).rejects.toMatchObject({
        code: 'program-missing',
        tryNext: expect.stringContaining('tcp://127.0.0.1:0'),
      });
    } finally {
      process.env['PATH'] = path;
    }
  });
});
