import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Source, SourceEvent } from '../../src/model/source.ts';
import { ToolError } from '../../src/model/tool-error.ts';

/** A port with both its ends in the test's hands. */
export interface Rig {
  source(): Source;
  /** From the controller's end. */
  send(bytes: Uint8Array): void;
  /** What has come out at the controller's end so far. */
  received(): Buffer;
  unplug(): Promise<void>;
  plugIn(): Promise<void>;
  end(): Promise<void>;
}

/** Waits for what must come; fails by saying what was waited for. */
export async function until(what: string, holds: () => boolean, within = 4000): Promise<void> {
  for (const end = performance.now() + within; performance.now() < end; await pause(5)) if (holds()) return;
  expect.fail(`waited ${within} ms in vain for: ${what}`);
}

export const bytesOf = (events: readonly SourceEvent[]) =>
  Buffer.concat(events.flatMap((event) => (event.kind === 'bytes' ? [event.bytes] : [])));

/** What every port owes a session. One suite, whatever the bytes travel through. */
export function sourceContract(make: () => Promise<Rig>): void {
  let rig: Rig;
  let source: Source;
  let events: SourceEvent[];
  const kinds = () => events.map(({ kind }) => kind).filter((kind) => kind !== 'bytes');
  const opened = () => source.open((event) => events.push(event));

  beforeEach(async () => {
    rig = await make();
    source = rig.source();
    events = [];
  });
  afterEach(async () => {
    await source.close();
    await rig.end();
  });

  it('says that it is open, and then hands over every byte value unchanged', async () => {
    await opened();
    expect(events.map(({ kind }) => kind)).toEqual(['opened']);
    const all = Uint8Array.from({ length: 1024 }, (_, i) => (i * 7) % 256);
    rig.send(all);
    await until('1024 bytes', () => bytesOf(events).length >= all.length);
    expect(bytesOf(events)).toEqual(Buffer.from(all));
  });

  it('hands over pieces in order, each with a time that never goes back', async () => {
    await opened();
    for (const piece of ['$PTW', 'RQ*5', '0\r\n']) {
      rig.send(Buffer.from(piece));
      await pause(30);
    }
    await until('the line', () => bytesOf(events).length === 11);
    expect(bytesOf(events).toString()).toBe('$PTWRQ*50\r\n');
    const times = events.map(({ arrived }) => arrived);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect((times.at(-1) ?? 0) - (times[0] ?? 0)).toBeGreaterThan(20);
    for (const time of times) expect(Number(time.toFixed(3))).toBe(time);
  });

  it('writes nothing by itself, and what it is given unchanged', async () => {
    await opened();
    await pause(100);
    expect(rig.received()).toHaveLength(0);
    source.write(Buffer.from('$PTWRQ*50\r\n'));
    source.write(Buffer.from([0, 1, 13, 255]));
    await until('15 bytes', () => rig.received().length >= 15);
    expect(rig.received()).toEqual(Buffer.from('$PTWRQ*50\r\n\x00\x01\r\xff', 'latin1'));
  });

  it('is lost when the cable is pulled, and goes on by itself when it is plugged in again', async () => {
    await opened();
    rig.send(Buffer.from('before'));
    await until('bytes', () => bytesOf(events).length === 6);
    await rig.unplug();
    await until('the loss', () => kinds().includes('lost'));
    expect(() => source.write(Buffer.from('x'))).toThrow(ToolError);
    await pause(700);
    expect(kinds()).toEqual(['opened', 'lost']);
    await rig.plugIn();
    await until('the second opening', () => kinds().length === 3);
    expect(kinds()).toEqual(['opened', 'lost', 'opened']);
    rig.send(Buffer.from('after'));
    await until('bytes again', () => bytesOf(events).length === 11);
    expect(bytesOf(events).toString()).toBe('beforeafter');
    const lost = events.find((event) => event.kind === 'lost');
    expect(lost?.kind === 'lost' && lost.why).not.toBe('');
  });

  it('closed is silent: no event, no further attempt', async () => {
    await opened();
    await rig.unplug();
    await until('the loss', () => kinds().includes('lost'));
    await source.close();
    const before = events.length;
    await rig.plugIn();
    await pause(700);
    expect(events).toHaveLength(before);
    expect(() => source.write(Buffer.from('x'))).toThrow(ToolError);
  });

  it('can be closed twice, and opened only once', async () => {
    await opened();
    await source.close();
    await source.close();
    await expect(opened()).rejects.toMatchObject({ name: 'ToolError' });
  });

  it('that is not there says so at its first opening, and what to try', async () => {
    await rig.unplug();
    await expect(opened()).rejects.toMatchObject({ code: 'port-missing' });
    await expect(rig.source().open(() => {})).rejects.toHaveProperty(
      'tryNext',
      expect.stringContaining('tellwire ports'),
    );
    expect(events).toEqual([]);
  });
}
