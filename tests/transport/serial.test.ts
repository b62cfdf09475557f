import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { MockBinding } from '@serialport/binding-mock';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Source, SourceEvent } from '../../src/model/source.ts';
import { realTime as time } from '../../src/transport/real-time.ts';
import { serialSource } from '../../src/transport/serial.ts';
import type { SerialBinding } from '../../src/transport/serial-binding.ts';
import { serialError } from '../../src/transport/serial-errors.ts';
import { listPorts } from '../../src/transport/serial-ports.ts';
import { type Cable, describeWithSocat, plugIn } from './socat.ts';
import { until } from './source-contract.ts';

const silent = () => {};
const baud = 115_200;

describe('a serial port that cannot be opened', () => {
  it('is missing where the system has none of that name', async () => {
    const source = serialSource('/dev/ttyNotHere', { baud, time });
    await expect(source.open(silent)).rejects.toMatchObject({
      code: 'port-missing',
      message: 'There is no port /dev/ttyNotHere.',
      tryNext: expect.stringContaining('tellwire ports'),
    });
  });

  it('failed where the file is no serial port', async () => {
    const source = serialSource('/dev/null', { baud, time });
    await expect(source.open(silent)).rejects.toMatchObject({
      code: 'port-failed',
      tryNext: expect.stringContaining('tellwire ports'),
    });
  });

  // The words of the native binding's own source for Windows, which no test here runs on.
  it.each([
    ['Opening COM3: File not found', 'port-missing'],
    ['Opening COM3: Access denied', 'port-busy'],
    ['Error: Device or resource busy, cannot open /dev/tty.usbserial', 'port-busy'],
    ['Error: Operation not permitted, cannot open /dev/tty.usbserial', 'port-not-permitted'],
    ['Opening COM3: Unknown error code 31', 'port-failed'],
  ])('"%s" is %s', (said, code) => expect(serialError('COM3', baud, new Error(said)).code).toBe(code));

  it('is told without control characters of its name', () => {
    expect(serialError('/dev/\x1b[2J', baud, 'x').message).not.toMatch(/[\x00-\x1f]/);
  });
});

describeWithSocat('a serial device', () => {
  let folder: string;
  let path: string;
  let cable: Cable;
  let source: Source;
  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'tellwire-serial-'));
    chmodSync(folder, 0o755);
    path = join(folder, 'port');
    cable = await plugIn(path);
    source = serialSource(path, { baud, time });
  });
  afterEach(async () => {
    await source.close();
    await cable.unplug();
    rmSync(folder, { recursive: true });
  });

  it('is busy where another program has it open, and free when that closes it', async () => {
    await source.open(silent);
    const second = serialSource(path, { baud, time });
    await expect(second.open(silent)).rejects.toMatchObject({ code: 'port-busy' });
    await source.close();
  });

  it('is not permitted where the user may not open it', async () => {
    // Root may open everything: so this part is done as nobody.
    const isRoot = process.getuid?.() === 0;
    if (isRoot) process.seteuid?.(65_534);
    else chmodSync(path, 0);
    try {
      await expect(source.open(silent)).rejects.toMatchObject({
        code: 'port-not-permitted',
        tryNext: expect.stringContaining('ls -l'),
      });
    } finally {
      if (isRoot) process.seteuid?.(0);
    }
  });
});

describe('an open serial port', () => {
  const folder = mkdtempSync(join(tmpdir(), 'tellwire-mock-'));
  const path = join(folder, 'device');
  let asked: object[] = [];
  const binding: SerialBinding = {
    list: () => MockBinding.list(),
    open(options) {
      asked.push(options);
      return MockBinding.open(options);
    },
  };
  let events: SourceEvent[];
  let source: Source;
  beforeEach(() => {
    asked = [];
    events = [];
    writeFileSync(path, '');
    MockBinding.createPort(path);
    source = serialSource(path, { baud: 250_000, time, binding });
  });
  afterEach(async () => {
    await source.close();
    MockBinding.reset();
    rmSync(path, { force: true });
  });

  it('is asked to leave DTR alone when it closes, and to be ours alone', async () => {
    await source.open(silent);
    expect(asked).toEqual([{ path, baudRate: 250_000, hupcl: false, lock: true, rtscts: false }]);
  });

  it('is lost when its device file goes, even where no read fails', async () => {
    await source.open((event) => events.push(event));
    rmSync(path);
    MockBinding.reset();
    await until('the loss', () => events.some(({ kind }) => kind === 'lost'));
    expect(events.at(-1)).toMatchObject({ kind: 'lost', why: 'the device is gone' });
    writeFileSync(path, '');
    MockBinding.createPort(path);
    await until('the opening', () => events.at(-1)?.kind === 'opened');
  });

  it('is busy for a second source', async () => {
    await source.open(silent);
    await expect(serialSource(path, { baud, time, binding }).open(silent)).rejects.toMatchObject({
      code: 'port-busy',
    });
  });
});

describe('the list of ports', () => {
  it('tells path and maker, control characters written out', async () => {
    MockBinding.createPort('/dev/b', { manufacturer: 'M\x1b[1m' });
    MockBinding.createPort('/dev/a', { manufacturer: 'N' });
    expect(await listPorts({ ...MockBinding, open: MockBinding.open })).toMatchObject([
      { path: '/dev/a', maker: 'N', usb: undefined },
      { path: '/dev/b', maker: 'M\\x1b[1m', usb: undefined },
    ]);
    MockBinding.reset();
  });

  it('is what this computer has', async () => {
    for (const port of await listPorts()) expect(port.path).not.toBe('');
  });
});
