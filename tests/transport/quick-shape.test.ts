import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sumDigits } from '../../src/transport/stream/checksum.ts';
import { writeStatus } from '../../src/transport/stream/native-writer.ts';
import { pieceOf } from '../../src/transport/stream/quick-fields.ts';
import { QuickShape } from '../../src/transport/stream/quick-shape.ts';
import { QuickStatus } from '../../src/transport/stream/quick-status.ts';

const place = fc.integer({ min: -9_999_999, max: 9_999_999 }).map((steps) => steps / 1000);
const status = fc.record({
  seq: fc.nat(65_535),
  ms: fc.nat(2 ** 32 - 1),
  activity: fc.constantFrom('still' as const, 'moving' as const),
  levels: fc.constantFrom(['H', 'L', 'H'] as const, ['H', 'H', 'H'] as const),
  active: fc.constantFrom(['1', '0', '1'] as const, ['0', '0', '0'] as const),
  positions: fc.array(place, { minLength: 0, maxLength: 4 }),
});
/** What is changed in a line, and whether its sum is made right again. */
const change = fc.record({ at: fc.nat(120), to: fc.integer({ min: 0x20, max: 0x7e }), mended: fc.boolean() });

const sound = (each: Parameters<typeof writeStatus>[0]) => writeStatus(each).replace('\r', '');

function changed(line: string, { at, to, mended }: { at: number; to: number; mended: boolean }): string {
  const star = line.indexOf('*');
  const body = [...line.slice(1, star)];
  body[at % body.length] = String.fromCharCode(to);
  const text = body.join('');
  return `$${text}*${mended ? sumDigits(text) : line.slice(star + 1, star + 3)}\n`;
}

/** Other digits in the same places, activity and inputs as they were, the sum right. */
function rerolled(line: string, digits: readonly number[]): string {
  let drawn = 0;
  const fields = line.slice(1, line.indexOf('*')).split(',');
  const body = fields
    .map((field, at) =>
      at > 2 && at < 6 ? field : field.replace(/\d/g, () => `${digits[drawn++ % digits.length]}`),
    )
    .join(',');
  return `$${body}*${sumDigits(body)}\n`;
}

/** The line behind some other bytes, as in the middle of a file. */
function placed(line: string) {
  const piece = pieceOf(400);
  piece.bytes.fill(0x37);
  piece.bytes.write(line, 5, 'latin1');
  return piece;
}

function learnt(line: string) {
  const [shape, full] = [new QuickShape(), new QuickStatus()];
  const piece = placed(line);
  expect(full.read(piece, 5)).toBe(true);
  shape.learn(piece, 5, full.star, full.inputsAt, full.inputsEnd);
  return { shape, full };
}

describe('a status of the shape of the one before', () => {
  it('is never taken for sound where the whole reading refuses it, and tells the same numbers', () => {
    let taken = 0;
    fc.assert(
      fc.property(status, fc.array(fc.nat(9), { minLength: 7 }), fc.option(change), (one, digits, wrong) => {
        const { shape, full } = learnt(sound(one));
        const like = rerolled(sound(one), digits);
        const piece = placed(wrong ? changed(like, wrong) : like);
        if (!shape.read(piece, 5)) return;
        taken++;
        expect(full.read(piece, 5)).toBe(true);
        expect([shape.seq, shape.ms, shape.end]).toEqual([full.seq, full.ms, full.end]);
      }),
      { numRuns: 10_000, seed: 5 },
    );
    expect(taken).toBeGreaterThan(500);
  });

  it('is read wherever only digits of its numbers differ', () => {
    const { shape } = learnt(
      sound({
        seq: 41_003,
        ms: 9_000_100,
        activity: 'moving',
        levels: ['H'],
        active: ['1'],
        positions: [10.25, -3.5],
      }),
    );
    const next = placed(
      sound({
        seq: 41_004,
        ms: 9_000_110,
        activity: 'moving',
        levels: ['H'],
        active: ['1'],
        positions: [99.999, -0],
      }),
    );
    expect(shape.read(next, 5)).toBe(false);
    const alike = placed(
      sound({
        seq: 65_535,
        ms: 9_999_999,
        activity: 'moving',
        levels: ['H'],
        active: ['1'],
        positions: [99.999, -9.001],
      }),
    );
    expect(shape.read(alike, 5)).toBe(true);
    expect([shape.seq, shape.ms]).toEqual([65_535, 9_999_999]);
  });

  it.each([
    ['an input that changed', { active: ['0'] as const }],
    ['another activity', { activity: 'still' as const }],
  ])('leaves %s to the whole reading', (_what, other) => {
    const base = {
      seq: 41_003,
      ms: 9_000_100,
      activity: 'moving',
      levels: ['H'],
      active: ['1'],
      positions: [1],
    } as const;
    const { shape } = learnt(sound(base));
    expect(shape.read(placed(sound({ ...base, ...other })), 5)).toBe(false);
  });

  it('refuses a sequence or a clock beyond what their counters hold', () => {
    const { shape } = learnt(
      sound({
        seq: 41_003,
        ms: 4_000_000_000,
        activity: 'moving',
        levels: ['H'],
        active: ['1'],
        positions: [1],
      }),
    );
    const line = (seq: number, ms: number) => {
      const body = `PTWRS,${seq},${ms},moving,H,1,1.000`;
      return placed(`$${body}*${sumDigits(body)}\n`);
    };
    expect(shape.read(line(65_535, 4_294_967_295), 5)).toBe(true);
    expect(shape.read(line(65_536, 4_000_000_000), 5)).toBe(false);
    expect(shape.read(line(41_003, 4_294_967_296), 5)).toBe(false);
  });
});
