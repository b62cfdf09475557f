import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { homingPlan, simulate } from '../../../scripts/simulated-seek.mjs';
import { cutHoming } from '../../../src/diagnose/homing/cut.ts';
import { judgeHoming } from '../../../src/diagnose/homing/judge.ts';
import { motionOf } from '../../../src/diagnose/motion/motion.ts';
import type { StatusReading } from '../../../src/model/reading.ts';
import { mm, ms } from '../../../src/model/units.ts';
import { windowOf } from './reports.ts';

/** Everything a homing comes to. */
function figures(readings: readonly StatusReading[]) {
  const window = windowOf(readings);
  const motion = motionOf(window, 'X', {
    step: mm(0.0125),
    rapid: 3600,
    acceleration: 300,
  });
  const { figures: found, issues } = judgeHoming(cutHoming({ window, motion, input: 'home' }));
  return JSON.parse(JSON.stringify({ ...found, issues })) as Record<string, unknown> & { way: number };
}

const run = (seed: number) =>
  simulate({
    plan: homingPlan({ way: -1, input: 'home', value: 5 }),
    stands: 20,
    acceleration: 300,
    switches: { home: { actuates: -2, frees: -1.6, outwards: -1 } },
    jitter: 0.2,
    loss: 0.05,
    seed,
  }).readings;

const moved = (readings: readonly StatusReading[], change: (position: number) => number) =>
  readings.map((each) => ({
    ...each,
    positions: each.positions.map((at) => (at === undefined ? at : mm(change(at)))),
  }));
const seeds = fc.integer({ min: 1, max: 1e6 });
/** What a homing comes to beside where it was. */
const lengths = ({ trip: _, slowTrip: __, ...rest }: Record<string, unknown>) => rest;

interface Doubtful {
  readonly low: number;
  readonly value: number;
  readonly high: number;
}
const isDoubtful = (value: unknown): value is Doubtful =>
  typeof value === 'object' && value !== null && 'low' in value && 'high' in value && 'value' in value;

/** A thousandth of a millimetre, of a second: below this the last bits of a clock that counts for days show. */
const alike = 1e-3;

/** Where two reports tie to the last bit the other may be taken: what carries its own doubt may move within it, nothing else may move. */
function expectAlike(one: unknown, other: unknown, at = 'it'): void {
  if (isDoubtful(one) && isDoubtful(other)) {
    expect(one.value, at).toBeGreaterThanOrEqual(other.low - alike);
    expect(one.value, at).toBeLessThanOrEqual(other.high + alike);
  } else if (typeof one === 'number' && typeof other === 'number') {
    expect(Math.abs(one - other), at).toBeLessThanOrEqual(alike);
  } else if (typeof one === 'object' && one !== null && typeof other === 'object' && other !== null) {
    expect(Object.keys(one).sort(), at).toEqual(Object.keys(other).sort());
    for (const [key, value] of Object.entries(one))
      expectAlike(value, (other as Record<string, unknown>)[key], `${at}.${key}`);
  } else expect(one, at).toEqual(other);
}

describe('what is read from a homing', () => {
  it('does not change with when it was', () => {
    fc.assert(
      fc.property(seeds, fc.integer({ min: 0, max: 1e9 }), (seed, later) => {
        const readings = run(seed);
        const shifted = readings.map((each) => ({
          ...each,
          at: ms(each.at + later),
          arrived: ms(each.arrived + later / 2),
        }));
        expectAlike(figures(shifted), figures(readings));
      }),
      { numRuns: 25 },
    );
  });

  it('does not change with where zero was, but for the places themselves', () => {
    fc.assert(
      fc.property(seeds, fc.integer({ min: -40, max: 40 }), (seed, by) => {
        const readings = run(seed);
        // By whole steps of 0.0125 mm.
        expectAlike(lengths(figures(moved(readings, (at) => at + by * 12.5))), lengths(figures(readings)));
      }),
      { numRuns: 25 },
    );
  });

  it('is its own mirror image where every sign is turned', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const readings = run(seed);
        const [here, there] = [figures(readings), figures(moved(readings, (at) => -at))];
        const { way, shift, ...same } = lengths(here) as {
          way: number;
          shift: { low: number; high: number };
        };
        expectAlike(lengths(there), { ...same, way: -way, shift: { low: -shift.high, high: -shift.low } });
      }),
      { numRuns: 25 },
    );
  });
});
