import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Reading } from '../../../src/model/reading.ts';
import { ms } from '../../../src/model/units.ts';
import { decodeEntry, encodeEntry } from '../../../src/transport/capture.ts';
import { hearing, readingsOf } from '../../../src/transport/hearing.ts';
import { nativeDecoder } from '../../../src/transport/stream/native-decoder.ts';
import {
  writeDeclaration,
  writeEdge,
  writeStatus,
  writeVolts,
} from '../../../src/transport/stream/native-writer.ts';

const inputs = ['x-home', 'y-home', 'z-home', 'probe'];
const level = fc.constantFrom('H' as const, 'L' as const, '?' as const);
const active = fc.constantFrom('1' as const, '0' as const, '?' as const);
const four = <T>(each: fc.Arbitrary<T>) => fc.array(each, { minLength: 4, maxLength: 4 });

/** A stream as a controller sends it: declared first, 20 ms between reports, with noise on the line now and then. */
const stream = fc
  .array(
    fc.record({
      what: fc.constantFrom('status', 'status', 'status', 'edge', 'volts', 'declaration', 'noise'),
      levels: four(level),
      active: four(active),
      at: fc.double({ min: -500, max: 500, noNaN: true }),
      noise: fc.uint8Array({ maxLength: 400 }),
    }),
    { maxLength: 25 },
  )
  .map((said) => {
    const declaration = writeDeclaration({ units: 'mm', axes: ['X', 'Y', 'Z'], inputs }).join('');
    let seq = 65_530;
    const texts = said.map(({ what, levels, active, at, noise }, i) => {
      const clock = 2 ** 32 - 100 + i * 20;
      if (what === 'noise') return Buffer.from(noise).toString('latin1');
      if (what === 'declaration') return declaration;
      if (what === 'volts') return writeVolts(clock, [5000, undefined, 0, -3]);
      if (what === 'edge') return writeEdge(seq++, clock * 1000, i % 4, 'H');
      return writeStatus({
        seq: seq++,
        ms: clock,
        activity: 'still',
        levels,
        active,
        positions: [at, undefined, 0],
      });
    });
    return Buffer.from([declaration, ...texts].join(''), 'latin1');
  });

/** Bytes to readings the way a session makes them; the pieces all arrive at one moment, so that only the cuts differ. */
function readings(all: Buffer, cuts: readonly number[]): readonly Reading[] {
  const hear = hearing('port');
  const decoder = nativeDecoder();
  const ends = [...cuts.filter((at) => at < all.length).sort((a, b) => a - b), all.length];
  const events = [
    { kind: 'opened' as const, arrived: ms(0) },
    ...ends.map((end, i) => ({
      kind: 'bytes' as const,
      arrived: ms(5),
      bytes: all.subarray(ends[i - 1] ?? 0, end),
    })),
    { kind: 'lost' as const, arrived: ms(9), why: 'pulled' },
  ];
  return events.flatMap(hear).flatMap((entry) => readingsOf(entry, decoder));
}

describe('a stream of bytes', () => {
  it('gives the same readings however its bytes are cut', () => {
    fc.assert(
      fc.property(stream, fc.array(fc.nat(3000), { maxLength: 40 }), (all, cuts) => {
        expect(readings(all, cuts)).toEqual(readings(all, []));
      }),
    );
  });

  it('gives the same readings byte by byte', () => {
    fc.assert(
      fc.property(stream, (all) => {
        expect(
          readings(
            all,
            Array.from(all, (_, i) => i),
          ),
        ).toEqual(readings(all, []));
      }),
      { numRuns: 20 },
    );
  });

  it('gives the same readings from its capture as live', () => {
    fc.assert(
      fc.property(stream, fc.uint8Array({ maxLength: 300 }), (all, tail) => {
        const hear = hearing('port');
        const live = nativeDecoder();
        const again = nativeDecoder();
        const entries = [
          ...hear({ kind: 'opened', arrived: ms(0.125) }),
          ...hear({ kind: 'bytes', arrived: ms(1.001), bytes: all }),
          ...hear({ kind: 'bytes', arrived: ms(20.5), bytes: tail }),
          ...hear({ kind: 'lost', arrived: ms(21.75), why: 'pulled' }),
        ];
        const replayed = entries.map((entry) => decodeEntry(encodeEntry(entry).slice(0, -1)));
        expect(replayed.flatMap((entry) => (entry ? readingsOf(entry, again) : []))).toEqual(
          entries.flatMap((entry) => readingsOf(entry, live)),
        );
      }),
    );
  });

  it('may be anything at all: nothing is thrown, and readings never go back in arrival', () => {
    const piece = fc.oneof(
      fc.uint8Array({ maxLength: 500 }),
      stream,
      fc
        .string({ unit: fc.constantFrom(...'$*,PTWRSDNEA0159HL\r\n '), maxLength: 300 })
        .map((text) => Buffer.from(text)),
    );
    const event = fc.oneof(
      { weight: 8, arbitrary: fc.record({ kind: fc.constant('bytes' as const), bytes: piece }) },
      { weight: 1, arbitrary: fc.record({ kind: fc.constant('opened' as const) }) },
      { weight: 1, arbitrary: fc.record({ kind: fc.constant('lost' as const), why: fc.string() }) },
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(event, fc.nat(4000)), { maxLength: 30 }), (events) => {
        const hear = hearing('port');
        const decoder = nativeDecoder();
        let now = 0;
        const found = events.flatMap(([each, later]) => {
          now += later;
          return hear({ ...each, arrived: ms(now) }).flatMap((entry) => readingsOf(entry, decoder));
        });
        const arrivals = found.map(({ arrived }) => arrived);
        expect(arrivals).toEqual([...arrivals].sort((a, b) => a - b));
      }),
    );
  });
});

describe('statuses that wait for a declaration that never comes', () => {
  it('cost bounded memory, however many come within the six seconds', () => {
    const decoder = nativeDecoder();
    let given = 0;
    for (let i = 0; i < 100_000; i++) {
      const text = writeStatus({
        seq: i,
        ms: i,
        activity: 'still',
        levels: ['L'],
        active: [],
        positions: [],
      }).trim();
      given += decoder.decode({ arrived: ms(i / 1000), text, cut: 0 }).length;
    }
    const left = decoder.gap(ms(200), 'lost-port').length - 1;
    expect(given + left).toBe(100_000);
    expect(left).toBeLessThanOrEqual(8192);
  });
});
