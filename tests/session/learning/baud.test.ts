import { MockBinding } from '@serialport/binding-mock';
import { describe, expect, it } from 'vitest';
import { randomFor } from '../../../src/bench/random.ts';
import { namedShapes } from '../../../src/bench/speaking/shapes.ts';
import { speakerFor } from '../../../src/bench/speaking/speaker.ts';
import {
  baudByListening,
  isReadable,
  printableShare,
  usualRates,
} from '../../../src/session/learning/baud.ts';
import { realTime } from '../../../src/transport/real-time.ts';
import { serialSource } from '../../../src/transport/serial.ts';
import type { SerialBinding } from '../../../src/transport/serial-binding.ts';
import { sampledAt } from './sampled-line.ts';

const shapes = Object.entries(namedShapes);

/** A second or so of a stream in this shape. */
function textOf(at: number): Uint8Array {
  const [, shape] = shapes[at % shapes.length] ?? shapes[0] ?? [];
  if (!shape) throw new Error('there are shapes');
  const speak = speakerFor(shape, 8, 3, at);
  const lines = Array.from({ length: 20 }, (_, i) =>
    speak({
      inputs: Array.from({ length: 8 }, (_, k) => (i + k) % 5 === 0),
      positions: [i * 1.5, -i, 3],
      activity: 'still',
      ms: i * 50,
      seq: i,
    }),
  );
  return Buffer.from(`${lines.flat().join('\r\n')}\r\n`, 'latin1');
}

describe('text on a serial line is readable', () => {
  it.each(usualRates)('at the rate of its sender, %d', (rate) => {
    for (let at = 0; at < shapes.length; at++) {
      const sent = textOf(at);
      expect(Buffer.from(sampledAt(rate, rate, sent)).equals(Buffer.from(sent))).toBe(true);
      expect(isReadable(sampledAt(rate, rate, sent))).toBe(true);
    }
  });

  it.each(usualRates)('at no rate that is tried before its sender’s, %d', (rate) => {
    for (const other of usualRates.slice(0, usualRates.indexOf(rate)))
      for (let at = 0; at < shapes.length; at++)
        expect(isReadable(sampledAt(rate, other, textOf(at))), `${rate} heard at ${other}`).toBe(false);
  });
});

it('random bytes, silence and a handful of text are no readable stream', () => {
  const random = randomFor(3, 'noise');
  const noise = Uint8Array.from({ length: 4000 }, () => Math.floor(random.within(0, 256)));
  expect(printableShare(noise)).toBeLessThan(0.5);
  expect(isReadable(noise)).toBe(false);
  expect(isReadable(new Uint8Array())).toBe(false);
  expect(isReadable(Buffer.from('ready\r\n'))).toBe(false);
});

/** A line behind the mock binding: its sender has one rate, and whoever opens it at another hears what that makes of it. */
function lineOf(
  rate: number,
  opened: number[],
  startsAfter = 0,
): { binding: SerialBinding; written(): Buffer } {
  MockBinding.reset();
  MockBinding.createPort('/dev/line', { record: true });
  const written: Buffer[] = [];
  const begun = Date.now();
  const sent = textOf(1);
  const open: SerialBinding['open'] = async (options) => {
    opened.push(options.baudRate);
    const handle = await MockBinding.open(options);
    const chunk = Buffer.from(sampledAt(rate, options.baudRate, sent)).subarray(0, 300);
    const sending = setInterval(() => {
      if (Date.now() - begun >= startsAfter) handle.emitData(chunk);
    }, 10);
    return {
      read: (...where) => handle.read(...where),
      write: (bytes) => handle.write(bytes),
      close: () => {
        clearInterval(sending);
        written.push(handle.recording);
        return handle.close();
      },
    };
  };
  return { binding: { open, list: () => MockBinding.list() }, written: () => Buffer.concat(written) };
}

/** Ten times as fast as a person waits. */
const hasty = {
  now: () => (realTime.now() * 10) as ReturnType<typeof realTime.now>,
  after: (delay: number, then: () => void) =>
    realTime.after((delay / 10) as Parameters<typeof realTime.after>[0], then),
};

it('that is figures at 230400 is letters at 250000, which is why that is tried later', () => {
  const heard = sampledAt(230400, 250000, Buffer.from('0123456789\r\n'));
  expect(Buffer.from(heard).toString('latin1')).toBe('pqrstuvwxy\r\n');
  expect(usualRates.indexOf(230400)).toBeLessThan(usualRates.indexOf(250000));
});

describe('the rate of a port', () => {
  it.each([115200, 57600, 9600])(
    'is found by listening at one after the other, %d',
    { timeout: 60_000 },
    async (rate) => {
      const opened: number[] = [];
      const { binding, written } = lineOf(rate, opened);
      const found = await baudByListening(
        (baud) => serialSource('/dev/line', { baud, time: hasty, binding }),
        hasty,
      );
      expect(found).toBe(rate);
      expect(opened).toEqual(
        usualRates.slice(0, usualRates.indexOf(rate as (typeof usualRates)[number]) + 1),
      );
      expect(written()).toHaveLength(0);
    },
  );

  it('is found in a second round where the board was still starting in the first', {
    timeout: 60_000,
  }, async () => {
    const opened: number[] = [];
    const { binding } = lineOf(115200, opened, 400);
    expect(
      await baudByListening((baud) => serialSource('/dev/line', { baud, time: hasty, binding }), hasty),
    ).toBe(115200);
    expect(opened.filter((each) => each === 115200).length).toBe(2);
  });

  it('is asked of the person where no rate gives text', { timeout: 60_000 }, async () => {
    const opened: number[] = [];
    const { binding, written } = lineOf(115200, opened, 1e9);
    await expect(
      baudByListening((baud) => serialSource('/dev/line', { baud, time: hasty, binding }), hasty),
    ).rejects.toMatchObject({ code: 'nothing-heard', tryNext: expect.stringContaining('--baud') });
    expect(written()).toHaveLength(0);
  });
});
