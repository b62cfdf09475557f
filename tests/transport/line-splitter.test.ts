import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ms } from '../../src/model/units.ts';
import { lineSplitter } from '../../src/transport/line-splitter.ts';

const bytes = (text: string) => Buffer.from(text, 'latin1');
const texts = (text: string, limit?: number) =>
  lineSplitter(limit)
    .push(bytes(text), ms(0))
    .map((line) => [line.text, line.cut]);

describe('a line', () => {
  it('ends at LF and loses one CR before it', () => {
    expect(texts('a\r\nb\n\r\r\n\nc\rd\n')).toEqual([
      ['a', 0],
      ['b', 0],
      ['\r', 0],
      ['', 0],
      ['c\rd', 0],
    ]);
  });

  it('arrived when its LF did', () => {
    const splitter = lineSplitter();
    expect(splitter.push(bytes('one'), ms(1))).toEqual([]);
    expect(splitter.push(bytes('\ntwo\nthr'), ms(2)).map((line) => [line.text, line.arrived])).toEqual([
      ['one', 2],
      ['two', 2],
    ]);
    expect(splitter.flush(ms(3))).toEqual({ text: 'thr', arrived: 3, cut: 0 });
    expect(splitter.flush(ms(4))).toBeUndefined();
  });

  it('keeps its first 240 bytes and counts the rest, its CR among them', () => {
    expect(texts(`${'x'.repeat(239)}\n`)).toEqual([['x'.repeat(239), 0]]);
    expect(texts(`${'x'.repeat(238)}\r\n`)).toEqual([['x'.repeat(238), 0]]);
    // 241 bytes in all: one more than a sentence may have.
    expect(texts(`${'x'.repeat(239)}\r\n`)).toEqual([[`${'x'.repeat(239)}\r`, 0]]);
    expect(texts(`${'x'.repeat(300)}\r\n`)).toEqual([['x'.repeat(240), 61]]);
  });

  it('holds every byte value as the character of the same number', () => {
    const all = Uint8Array.from({ length: 200 }, (_, i) => (i + 56) % 256).filter((byte) => byte !== 10);
    const [line] = lineSplitter().push(Uint8Array.from([...all, 10]), ms(0));
    expect([...(line?.text ?? '')].map((character) => character.charCodeAt(0))).toEqual([...all]);
  });

  it('is the same however its bytes are cut', () => {
    const noise = fc
      .uint8Array({ maxLength: 600 })
      .map((each) => each.map((byte) => (byte < 40 ? 10 : byte)));
    fc.assert(
      fc.property(noise, fc.array(fc.nat(600)), (all, cuts) => {
        const whole = lineSplitter();
        const expected = [...whole.push(all, ms(0)), whole.flush(ms(0))];
        const cut = lineSplitter();
        const ends = [...cuts.filter((at) => at < all.length).sort((a, b) => a - b), all.length];
        const found = ends.flatMap((end, i) => cut.push(all.subarray(ends[i - 1] ?? 0, end), ms(0)));
        expect([...found, cut.flush(ms(0))]).toEqual(expected);
      }),
    );
  });

  it('costs no more memory where ten megabytes hold no LF', () => {
    const splitter = lineSplitter();
    const chunk = new Uint8Array(65_536).fill(0x55);
    const before = process.memoryUsage();
    for (let sent = 0; sent < 10 * 2 ** 20; sent += chunk.length)
      expect(splitter.push(chunk, ms(0))).toEqual([]);
    const after = process.memoryUsage();
    expect(after.arrayBuffers - before.arrayBuffers).toBeLessThan(2 ** 20);
    expect(after.heapUsed - before.heapUsed).toBeLessThan(5 * 2 ** 20);
    const line = splitter.flush(ms(1));
    expect(line?.text).toBe('U'.repeat(240));
    expect(line?.cut).toBe(10 * 2 ** 20 - 240);
  });
});
