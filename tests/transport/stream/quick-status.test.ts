import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeEntry } from '../../../src/transport/capture.ts';
import { ReceivedHead } from '../../../src/transport/received-head.ts';
import { sumDigits } from '../../../src/transport/stream/checksum.ts';
import { readSentence } from '../../../src/transport/stream/native-sentences.ts';
import { pieceOf } from '../../../src/transport/stream/quick-fields.ts';
import { QuickStatus } from '../../../src/transport/stream/quick-status.ts';

const framed = (body: string): string => `$${body}*${sumDigits(body)}`;
const pieceWith = (text: string) => {
  const piece = pieceOf(text.length);
  piece.bytes.write(text, 'latin1');
  return piece;
};
const quickly = (read: QuickStatus, text: string) => {
  if (!read.read(pieceWith(`xx${text}\nxx`), 2)) return undefined;
  expect(read.end).toBe(2 + text.length);
  const { kind, seq, ms, activity, levels, active, positions } = read;
  return { kind, seq, ms, activity, levels, active, positions };
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
    const read = new QuickStatus();
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
    const found = quickly(new QuickStatus(), framed(body));
    expect(found).toBeDefined();
    expect(found).toEqual(readSentence(framed(body)));
  });

  it('gives unchanged levels as the same array', () => {
    const read = new QuickStatus();
    const [one, two, other] = ['HL,10', 'HL,10', 'HH,10'].map((bits, i) =>
      quickly(read, framed(`PTWRS,${i},${i},still,${bits}`)),
    );
    expect(two?.levels).toBe(one?.levels);
    expect(other?.levels).toEqual(['H', 'H']);
    expect(other?.active).toEqual(one?.active);
  });
});

describe('the head of a received line read straight from the bytes of a capture', () => {
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
    let taken = 0;
    fc.assert(
      fc.property(
        times,
        fc.constantFrom('rx', 'tx', 'rx+3', 'gap', 'r'),
        texts,
        fc.constantFrom(' ', ''),
        (time, kind, said, gap) => {
          const line = `${time} ${kind}${gap}${said}`.replaceAll('\n', '');
          const head = new ReceivedHead();
          const from = head.read(pieceWith(`xx${line}\n`), 2);
          if (from < 0) return;
          const text = Buffer.from(line, 'latin1').toString('latin1');
          const whole = decodeEntry(text);
          expect(text.slice(from - 2)).toBe(said.length === 0 ? '' : text.slice(text.indexOf(' rx ') + 4));
          if (whole) expect(whole).toMatchObject({ kind: 'rx', at: head.at });
          taken++;
        },
      ),
      { numRuns: 3000, seed: 42 },
    );
    expect(taken).toBeGreaterThan(100);
  });
});
