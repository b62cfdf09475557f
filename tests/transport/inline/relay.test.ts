import { randomBytes } from 'node:crypto';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { connect, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { decodeEntry } from '../../../src/transport/capture.ts';
import { type CaptureWriter, captureWriter } from '../../../src/transport/inline/capture-writer.ts';
import { Relay, type RelayNote } from '../../../src/transport/inline/relay.ts';
import { servePty } from '../../../src/transport/inline/serve-pty.ts';
import { type Served, serveTcp } from '../../../src/transport/inline/serve-tcp.ts';
import { realTime } from '../../../src/transport/real-time.ts';
import { serialSource } from '../../../src/transport/serial.ts';
import { describeWithSocat } from '../socat.ts';
import { openEnd, type PtyEnd } from './pty-end.ts';
import { ptyPair } from './pty-pair.ts';

const baud = 115_200;

describeWithSocat('a relay between a controller and a program', () => {
  let folder = '';
  let near = '';
  let far = '';
  let cable: Awaited<ReturnType<typeof ptyPair>>;
  let controller: PtyEnd;
  let relay: Relay;
  let capture: CaptureWriter;
  let served: Served | undefined;
  let arrival: (at: number) => void = () => {};
  const notes: RelayNote[] = [];
  const kinds = () => notes.map(({ kind }) => kind);
  const until = async (done: () => boolean, within = 20_000) => {
    for (let waited = 0; !done() && waited < within; waited += 10) await pause(10);
    expect(done()).toBe(true);
  };

  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'tellwire-relay-'));
    near = join(folder, 'near');
    far = join(folder, 'far');
    notes.length = 0;
    arrival = () => {};
    cable = await ptyPair(near, far);
    controller = await openEnd(far, baud);
    capture = await captureWriter(join(folder, 'capture.log'), near, realTime);
  });
  afterEach(async () => {
    await relay.close();
    await served?.close();
    served = undefined;
    await controller.close();
    await cable.unplug();
    await capture.close();
    rmSync(folder, { recursive: true, force: true });
  });

  const begin = async (mostWaiting?: number) => {
    relay = new Relay({
      controller: serialSource(near, { baud, time: realTime }),
      capture: {
        heard(event) {
          arrival(event.arrived);
          capture.heard(event);
        },
        sent: (bytes) => capture.sent(bytes),
      },
      note: (note) => notes.push(note),
      ...(mostWaiting !== undefined && { mostWaiting }),
    });
    await relay.open();
  };
  const program = async (): Promise<Socket> => {
    served ??= await serveTcp('tcp://127.0.0.1:0', (socket) => relay.join(socket));
    const before = kinds().filter((kind) => kind === 'program-came').length;
    const socket = connect({ host: '127.0.0.1', port: Number(served.port.split(':').at(-1)) });
    await once(socket, 'connect');
    await until(() => kinds().filter((kind) => kind === 'program-came').length > before);
    return socket;
  };

  it('passes ten megabytes of any bytes each way, at once, unchanged and in order', async () => {
    await begin();
    const socket = await program();
    const [down, up] = [randomBytes(10_000_000), randomBytes(10_000_000)];
    const heard: Buffer[] = [];
    let length = 0;
    socket.on('data', (bytes) => {
      heard.push(bytes);
      length += bytes.length;
    });
    socket.write(up);
    await Promise.all([
      controller.write(down),
      until(() => length >= down.length && controller.length >= up.length, 240_000),
    ]);
    expect(Buffer.concat(heard).equals(down)).toBe(true);
    expect(controller.heard().equals(up)).toBe(true);
    expect(relay.counts).toEqual({ fromController: 10_000_000, fromProgram: 10_000_000, notSent: 0 });
    socket.destroy();
  }, 270_000);

  it('keeps what passed in a capture, both directions', async () => {
    await begin();
    const socket = await program();
    await controller.write(Buffer.from('one\r\ntwo\r\n'));
    socket.write('a line of the program\n');
    await until(() => controller.length > 0);
    await until(() =>
      /two[\s\S]* tx |tx [\s\S]*two/.test(readFileSync(join(folder, 'capture.log'), 'latin1')),
    );
    const entries = readFileSync(join(folder, 'capture.log'), 'latin1')
      .trimEnd()
      .split('\n')
      .map(decodeEntry);
    expect(entries.map((entry) => `${entry?.kind} ${entry?.text}`).toSorted()).toEqual([
      `opening ${near}`,
      'rx one',
      'rx two',
      'tx a line of the program\n',
    ]);
    socket.destroy();
  });

  it('adds less than a millisecond to the way of a report, in the median', async () => {
    await begin();
    const socket = await program();
    // From the moment the bytes are in this process to the moment the program has them.
    const added: number[] = [];
    let cameAt = 0;
    arrival = (at) => {
      cameAt = at;
    };
    socket.on('data', () => added.push(performance.now() - cameAt));
    const report = Buffer.from(`${'x'.repeat(73)}\r\n`);
    for (let i = 1; i <= 500; i++) {
      await controller.write(report);
      while (added.length < i) await new Promise(setImmediate);
      await pause(1);
    }
    socket.destroy();
    const sorted = added.toSorted((a, b) => a - b);
    const at = (share: number) => sorted[Math.floor(sorted.length * share)] ?? Number.NaN;
    const told = [0.5, 0.95, 0.99].map((share) => at(share).toFixed(3)).join(' / ');
    process.stdout.write(`Added by the relay, ms, median / 95 % / 99 %: ${told}\n`);
    expect(at(0.5)).toBeLessThan(1);
  }, 60_000);

  it('never waits for a program that stopped reading, and lets it go at last', async () => {
    await begin(2_000_000);
    const socket = await program();
    socket.pause();
    const listener = await serveTcp('tcp://127.0.0.1:0', (other) => relay.listen(other));
    const beside = connect({ host: '127.0.0.1', port: Number(listener.port.split(':').at(-1)) });
    await once(beside, 'connect');
    await pause(50);
    let length = 0;
    beside.on('data', (bytes) => {
      length += bytes.length;
    });
    // A megabyte at a time: whoever listens beside and falls four behind is let go too, and here it shares its processor with the relay.
    for (let sent = 1_000_000; sent <= 12_000_000; sent += 1_000_000) {
      await controller.write(randomBytes(1_000_000));
      await until(() => relay.counts.fromController === sent && length === sent);
    }
    expect(kinds()).toEqual(expect.arrayContaining(['program-stuck', 'program-left']));
    const again = await program();
    // Waited for before it is sent: it may be here before the write is over.
    const heard = once(again, 'data');
    await controller.write(Buffer.from('still here'));
    expect((await heard).map(String)).toEqual(['still here']);
    for (const each of [socket, beside, again]) each.destroy();
    await listener.close();
  }, 200_000);

  it('goes on without a program, and refuses a second beside the first', async () => {
    await begin();
    const first = await program();
    first.destroy();
    await until(() => kinds().includes('program-left'));
    await controller.write(Buffer.from('nobody hears this'));
    await until(() => relay.counts.fromController > 0);
    const second = await program();
    const third = connect({ host: '127.0.0.1', port: Number(served?.port.split(':').at(-1)) });
    await once(third, 'close');
    expect(kinds()).toContain('program-refused');
    expect(second.destroyed).toBe(false);
    second.destroy();
  });

  it('drops what a program sends to a port that is gone, and goes on when it is back', async () => {
    await begin();
    const socket = await program();
    await controller.close();
    await cable.unplug();
    await until(() => kinds().includes('controller-lost'));
    socket.write('too late');
    await until(() => relay.counts.notSent === 8);
    cable = await ptyPair(near, far);
    controller = await openEnd(far, baud);
    await until(() => kinds().includes('controller-back'));
    socket.write('in time');
    await until(() => controller.length === 7);
    expect(controller.heard().toString()).toBe('in time');
    socket.destroy();
  }, 60_000);

  it('serves programs that know serial ports only', async () => {
    await begin();
    served = await servePty((socket) => relay.join(socket));
    const opened = await openEnd(served.port, baud);
    await until(() => kinds().includes('program-came'));
    await controller.write(Buffer.from('down'));
    await opened.write(Buffer.from('up'));
    await until(() => opened.length === 4 && controller.length === 2);
    await opened.close();
    await until(() => kinds().includes('program-left'));
  }, 30_000);
});
