import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Active, Level } from '../../../src/model/reading.ts';
import { ms } from '../../../src/model/units.ts';
import { nativeDecoder } from '../../../src/transport/stream/native-decoder.ts';
import { readSentence } from '../../../src/transport/stream/native-sentences.ts';
import {
  writeDeclaration,
  writeEdge,
  writeRequest,
  writeStatus,
  writeVolts,
} from '../../../src/transport/stream/native-writer.ts';
import { framed } from './by-hand.ts';

const text = (sentence: string) => sentence.replace(/\r\n$/, '');
const name = fc.string({ unit: fc.constantFrom(...'abcxyz0189-'), minLength: 1, maxLength: 24 });

describe('a written sentence', () => {
  it('is framed by a sum worked out by hand, and ends in CR LF', () => {
    // 50 ^ 54 ^ 57 ^ 52 ^ 51, hex codes of P T W R Q, is 50.
    expect(writeRequest()).toBe('$PTWRQ*50\r\n');
    const status = { seq: 7, ms: 1234.9, activity: 'still', levels: ['H', '?'], active: ['1', '0'] } as const;
    expect(writeStatus({ ...status, positions: [1.23456, undefined, -0.5] })).toBe(
      `${framed('PTWRS,7,1234,still,H?,10,1.235,,-0.500')}\r\n`,
    );
    expect(writeEdge(8, 12_345_678, 3, 'L')).toBe(`${framed('PTWRE,8,12345678,3,L')}\r\n`);
    expect(writeVolts(9, [4980, undefined, -3.4])).toBe(`${framed('PTWRA,9,4980,,-3')}\r\n`);
  });

  it('wraps its sequence at 2^16 and its clocks at 2^32', () => {
    const status = { activity: '?', levels: [], active: [], positions: [] } as const;
    expect(writeStatus({ ...status, seq: 65_536, ms: 2 ** 32 + 5 })).toBe(`${framed('PTWRS,0,5,,,')}\r\n`);
    expect(writeEdge(65_537, 2 ** 33 + 1, 0, 'H')).toBe(`${framed('PTWRE,1,1,0,H')}\r\n`);
  });

  it('is never longer than 240 bytes: a declaration goes on in sentences of more names', () => {
    fc.assert(
      fc.property(fc.uniqueArray(name, { minLength: 1, maxLength: 64 }), (inputs) => {
        const sentences = writeDeclaration({ units: 'inch', axes: ['X', 'Z', 'A'], inputs });
        const decoder = nativeDecoder();
        for (const sentence of sentences) {
          expect(sentence.length).toBeLessThanOrEqual(240);
          expect(decoder.decode({ arrived: ms(0), text: text(sentence), cut: 0 })).toEqual([]);
        }
        const levels = inputs.map((): Level => 'H');
        const status = writeStatus({ seq: 0, ms: 0, activity: 'still', levels, active: [], positions: [] });
        const [declared] = decoder.decode({ arrived: ms(0), text: text(status), cut: 0 });
        expect(declared).toMatchObject({ kind: 'declared', units: 'inch', axes: ['X', 'Z', 'A'], inputs });
      }),
    );
  });

  it('that would be longer than 240 bytes is refused, not cut', () => {
    const levels = new Array<Level>(64).fill('H');
    const active = new Array<Active>(64).fill('1');
    const positions = new Array<number>(9).fill(-12345.678);
    expect(() => writeStatus({ seq: 0, ms: 0, activity: 'still', levels, active, positions })).toThrow(
      RangeError,
    );
  });

  it('is read as what was written', () => {
    const status = fc.record({
      seq: fc.nat(65_535),
      ms: fc.nat(2 ** 32 - 1),
      activity: fc.constantFrom('still', 'moving', 'homing', 'fault', '?'),
      levels: fc.array(fc.constantFrom('H', 'L', '?'), { minLength: 20, maxLength: 20 }),
      active: fc.constantFrom([], new Array<'1'>(20).fill('1')),
      positions: fc.array(fc.option(fc.integer({ min: -9_999_999, max: 9_999_999 }), { nil: undefined }), {
        maxLength: 9,
      }),
    });
    fc.assert(
      fc.property(status, ({ positions, ...rest }) => {
        const inMicrons = positions.map((at) => (at === undefined ? undefined : at / 1000));
        const read = readSentence(text(writeStatus({ ...rest, positions: inMicrons })));
        expect(read).toEqual({ kind: 'status', ...rest, positions: inMicrons });
      }),
    );
  });
});
