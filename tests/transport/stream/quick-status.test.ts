import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { captureReader, decodeEntry } from '../../../src/transport/capture.ts';
import { sumDigits } from '../../../src/transport/stream/checksum.ts';
import { readSentence } from '../../../src/transport/stream/native-sentences.ts';
import { quickStatus } from '../../../src/transport/stream/quick-status.ts';

const framed = (body: string): string => `$${body}*${sumDigits(body)}`;
const padding = 'xx';
const quickly = (read: ReturnType<typeof quickStatus>, text: string) => {
  const bytes = Buffer.from(`${padding}${text}${padding}`, 'latin1');
  return read(bytes, padding.length, bytes.length - padding.length);
};

/** Fields that are right, nearly right and wrong in every way a status can be. */
const field = (right: readonly string[], wrong: readonly string[]) =>
  fc.oneof(
    { weight: 30, arbitrary: fc.constantFrom(...right) },
    { weight: 2, arbitrary: fc.constantFrom(...wrong) },
    { weight: 1, arbitrary: fc.string({ maxLength: 12, unit: 'binary-ascii' }) },
  );
const status = fc
  .tuple(
    field(['0', '65535', '007'], ['65536', '', '12345678901']),
    field(['0', '4294967295'], ['4294967296', '1.5', '-1']),
    field(['still', 'moving', 'homing', 'fault'], ['', 'Still', 'stillx']),
    field(['HL?', 'LLL'], ['H', '', 'hl?', 'HHHH']),
    field(['10?', '000'], ['1', '', 'HL?', '1111']),
    fc.array(
      field(
        ['0.000', '-0.000', '12.5', '-1234567.123456', '9'],
        ['12345678', '1.', '.5', '', '1e3', '-', '1.2.3', '1.1234567'],
      ),
      { maxLength: 10 },
    ),
  )
  .map(([seq, ms, activity, levels, active, positions]) =>
    ['PTWRS', seq, ms, activity, levels, active, ...positions].join(','),
  );

describe('a status read straight from its bytes', () => {
  it('is the very one that is read from its text, and nothing else is read', () => {
    const read = quickStatus();
    let taken = 0;
    fc.assert(
      fc.property(status, fc.boolean(), fc.nat(), (body, whole, at) => {
        const sound = framed(body);
        const text = whole ? sound : sound.slice(0, at % sound.length) + sound.slice((at % sound.length) + 1);
        const found = quickly(read, text);
        if (found === undefined) return;
        taken++;
        expect(found).toEqual(readSentence(text));
      }),
      { numRuns: 4000, seed: 41 },
    );
    expect(taken).toBeGreaterThan(200);
  });

  it.each([
    'PTWRS,1,2,still,HLH,010,1.250,-3.000',
    'PTWRS,65535,4294967295,fault,H,1',
    'PTWRS,0,0,homing,???,???,-0.000,0.1,1234567.654321',
  ])('takes %s', (body) => {
    const found = quickly(quickStatus(), framed(body));
    expect(found).toBeDefined();
    expect(found).toEqual(readSentence(framed(body)));
  });

  it('gives unchanged levels as the same array', () => {
    const read = quickStatus();
    const [one, two, other] = ['HL,10', 'HL,10', 'HH,10'].map((bits, i) =>
      quickly(read, framed(`PTWRS,${i},${i},still,${bits}`)),
    );
    expect(two?.levels).toBe(one?.levels);
    expect(other?.levels).toEqual(['H', 'H']);
    expect(other?.active).toBe(one?.active);
  });
});

describe('a received line read straight from the bytes of a capture', () => {
  const times = fc.oneof(
    fc.constantFrom('0.000', '999999999999.999', '1.5', '12.3456', 'x.000', '', '1234567890123.000'),
    fc.double({ min: 0, max: 1e9, noNaN: true }).map((time) => time.toFixed(3)),
  );
  const texts = fc.oneof(
    fc.string({ maxLength: 30 }),
    fc.string({ unit: 'binary', maxLength: 20 }),
    fc.constantFrom('', '\\x0a', '\\', 'a\\x41'),
  );
  it('is the very one that is read from its text', () => {
    fc.assert(
      fc.property(
        times,
        fc.constantFrom('rx', 'tx', 'rx+3', 'gap', 'r'),
        texts,
        fc.constantFrom(' ', ''),
        (time, kind, said, gap) => {
          const line = `${time} ${kind}${gap}${said}`.replaceAll('\n', '');
          const bytes = Buffer.from(`${line}\n`, 'latin1');
          const text = bytes.toString('latin1').slice(0, -1);
          if (text.includes('\n')) return;
          const [found] = captureReader().push(bytes);
          expect(found).toEqual(decodeEntry(text) ?? { kind: 'damaged', line: 1, text });
        },
      ),
      { numRuns: 3000, seed: 42 },
    );
  });
});
