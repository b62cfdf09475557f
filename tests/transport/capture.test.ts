import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ms } from '../../src/model/units.ts';
import { type CaptureEntry, decodeEntry, encodeEntry, toMicrosecond } from '../../src/transport/capture.ts';
import { captureReader } from './capture-reader.ts';

const latin1 = fc.uint8Array({ maxLength: 240 }).map((bytes) => Buffer.from(bytes).toString('latin1'));
const moment = fc.double({ min: 0, max: 1e9, noNaN: true }).map((at) => toMicrosecond(ms(at)));
const entry: fc.Arbitrary<CaptureEntry> = fc.oneof(
  fc.record({ kind: fc.constant('rx' as const), at: moment, text: latin1, cut: fc.nat(1e7) }),
  fc.record({
    kind: fc.constantFrom('tx' as const, 'gap' as const, 'opening' as const),
    at: moment,
    text: latin1,
  }),
);

const readAll = (file: Buffer, pieces: readonly number[] = []) => {
  const reader = captureReader();
  const ends = [...pieces.filter((at) => at < file.length).sort((a, b) => a - b), file.length];
  const lines = ends.flatMap((end, i) => reader.push(file.subarray(ends[i - 1] ?? 0, end)));
  return { lines, soundBytes: reader.soundBytes, tornBytes: reader.tornBytes };
};

describe('a capture', () => {
  it('says time, direction and text on one printable line', () => {
    const text = 'a\\b\x1b[2J\x7f\xe9';
    expect(encodeEntry({ kind: 'rx', at: ms(12.3456), text, cut: 0 })).toBe(
      '12.346 rx a\\x5cb\\x1b[2J\\x7f\\xe9\n',
    );
    expect(encodeEntry({ kind: 'rx', at: ms(0), text: '', cut: 31 })).toBe('0.000 rx+31 \n');
    expect(encodeEntry({ kind: 'tx', at: ms(5), text: '$PTWRQ*50\r\n' })).toBe(
      '5.000 tx $PTWRQ*50\\x0d\\x0a\n',
    );
  });

  it('gives back every entry byte for byte, and only printable characters stand in it', () => {
    fc.assert(
      fc.property(entry, (each) => {
        const line = encodeEntry(each);
        expect(line).toMatch(/^[\x20-\x7e]*\n$/);
        expect(decodeEntry(line.slice(0, -1))).toEqual(each);
      }),
    );
  });

  it('holds each of the 256 byte values', () => {
    for (let byte = 0; byte < 256; byte++) {
      const each: CaptureEntry = { kind: 'rx', at: ms(1), text: String.fromCharCode(byte), cut: 0 };
      expect(decodeEntry(encodeEntry(each).slice(0, -1))).toEqual(each);
    }
  });

  it('is read alike in pieces of any size', () => {
    fc.assert(
      fc.property(fc.array(entry, { maxLength: 8 }), fc.array(fc.nat(5000)), (entries, pieces) => {
        const file = Buffer.from(entries.map(encodeEntry).join(''));
        expect(readAll(file, pieces)).toEqual({ lines: entries, soundBytes: file.length, tornBytes: 0 });
      }),
    );
  });

  it('cut at any byte loses the torn line alone, and says how many bytes are sound', () => {
    const entries: CaptureEntry[] = [
      { kind: 'opening', at: ms(0), text: '/dev/ttyS0' },
      { kind: 'rx', at: ms(1.5), text: 'abc\x00', cut: 0 },
      { kind: 'rx', at: ms(2.125), text: 'x'.repeat(240), cut: 77 },
      { kind: 'gap', at: ms(3), text: 'gone' },
    ];
    const lines = entries.map(encodeEntry);
    const file = Buffer.from(lines.join(''));
    for (let length = 0; length <= file.length; length++) {
      const whole = lines.filter((_, i) => lines.slice(0, i + 1).join('').length <= length).length;
      const soundBytes = lines.slice(0, whole).join('').length;
      expect(readAll(file.subarray(0, length))).toEqual({
        lines: entries.slice(0, whole),
        soundBytes,
        tornBytes: length - soundBytes,
      });
    }
  });

  it('keeps a damaged line in its middle as such', () => {
    const file = Buffer.from('1.000 rx a\n1.000 rz b\n2.000 rx c\n');
    expect(readAll(file).lines).toEqual([
      { kind: 'rx', at: 1, text: 'a', cut: 0 },
      { kind: 'damaged', line: 2, text: '1.000 rz b' },
      { kind: 'rx', at: 2, text: 'c', cut: 0 },
    ]);
  });

  it.each([
    '',
    'rx a',
    '1 rx a',
    '1.00 rx a',
    '-1.000 rx a',
    '1.000 rx',
    '1.000 RX a',
    '1.000 rx+0 a',
    '1.000 tx+3 a',
    '1.000 rx a\\',
    '1.000 rx \\x1',
    '1.000 rx \\x1B',
    '1.000 rx \\x41',
    '1.000 rx \x1b',
    '1.000 rx \xe9',
    '1.000 rx a\r',
  ])('takes no other line than it writes: %j', (line) => expect(decodeEntry(line)).toBeUndefined());

  it('keeps the very moment that was judged live', () => {
    fc.assert(
      fc.property(moment, (at) => {
        expect(Number(at.toFixed(3))).toBe(at);
      }),
    );
  });
});
