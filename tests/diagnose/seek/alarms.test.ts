import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { simulate } from '../../../scripts/simulated-seek.mjs';
import type { StatusReading } from '../../../src/model/reading.ts';
import { mm, ms } from '../../../src/model/units.ts';
import { onX } from './played.ts';
import { alarms, expectOn, kinds, run } from './watching.ts';

describe('the alarms of a seek', () => {
  const flipped = (readings: readonly StatusReading[]) =>
    readings.map((each) => ({
      ...each,
      positions: each.positions.map((at) => (at === undefined ? at : mm(-at))),
    }));
  const setup = fc.record({
    way: fc.constantFrom(1 as const, -1 as const),
    seed: fc.integer({ min: 1, max: 1e6 }),
    period: fc.constantFrom(5, 20, 100),
    dither: fc.constantFrom(0, 1),
    loss: fc.constantFrom(0, 0.15),
  });

  it('of the same bytes with the sign of motion turned are exchanged', () => {
    fc.assert(
      fc.property(setup, ({ way, ...noise }) => {
        const { readings } = simulate({ ...onX({ plan: run(way, 15) }), acceleration: 300, ...noise });
        const [here, there] = [kinds(alarms(readings)), kinds(alarms(flipped(readings)))];
        expect([here, there]).toEqual(way === 1 ? [['heads-away'], []] : [[], ['heads-away']]);
      }),
      { numRuns: 60 },
    );
  });

  it('do not change with when or where it all was', () => {
    fc.assert(
      fc.property(setup, fc.integer({ min: -40, max: 40 }), ({ way, ...noise }, by) => {
        const { readings } = simulate({ ...onX({ plan: run(way, 40) }), acceleration: 300, ...noise });
        const moved = readings.map((each) => ({
          ...each,
          at: ms(each.at + 7_000),
          positions: each.positions.map((at) => mm((at ?? 0) + by * 12.5)),
        }));
        // The home value lies elsewhere then, too.
        const expected = expectOn('X');
        expect(kinds(alarms(moved, { ...expected, homeValue: mm(by * 12.5) }))).toEqual(
          kinds(alarms(readings)),
        );
      }),
      { numRuns: 60 },
    );
  });
});
