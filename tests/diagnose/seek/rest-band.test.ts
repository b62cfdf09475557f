import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RestBand } from '../../../src/diagnose/seek/rest-band.ts';
import { mm } from '../../../src/model/units.ts';

/** Positions in steps; the report, counted from 0, at which motion was certain, and its way. */
function leaves(positions: readonly number[], gridKnown = true, saidStill = false) {
  const band = new RestBand((positions[0] ?? 0) * 0.01, mm(0.01), gridKnown);
  for (const [i, position] of positions.entries()) {
    const way = band.take(position * 0.01, saidStill);
    if (way !== undefined) return `${i} ${way === 1 ? '+' : '-'}`;
  }
  return 'rests';
}

describe('an axis at rest', () => {
  it('may be reported one step off for a report, on either side', () => {
    expect(leaves([0, 1, 0, 0, -1, 0, 0])).toBe('rests');
    expect(leaves([0, 1, 1, 0, 1, 1, 1, 0])).toBe('rests');
  });

  it('has certainly left where two reports in a row lie outside, the second further out', () => {
    expect(leaves([0, 0, 1, 2])).toBe('3 +');
    expect(leaves([0, 0, -1, -2])).toBe('3 -');
    expect(leaves([0, 0, -1, -2], false)).toBe('3 -');
  });

  it('has certainly left where two reports in a row lie two steps outside, if the grid is known', () => {
    expect(leaves([0, 0, 2, 2])).toBe('3 +');
    expect(leaves([0, 0, 2, 2, 2], false)).toBe('rests');
    expect(leaves([0, 0, 1, 1, 1])).toBe('rests');
  });

  it('has certainly left where a third value beside two neighbours comes twice in four reports, not where it comes once', () => {
    expect(leaves([0, 1, 0, 1, 2, 1, 2])).toBe('6 +');
    expect(leaves([0, 1, 0, 1, 2, 1, 0, 1, 0])).toBe('rests');
    expect(leaves([0, 1, 0, -1, -1])).toBe('4 -');
  });

  it('that the controller itself calls still may flicker wider', () => {
    expect(leaves([0, 1, 0, 1, 2, 1, 2, 0, 1], true, true)).toBe('rests');
    expect(leaves([0, 1, 0, 1, 3, 4], true, true)).toBe('5 +');
  });

  it('wrong once, however far, is still at rest', () => {
    expect(leaves([0, 0, 90, 0, 0, -90, 0])).toBe('rests');
  });

  it('is never called moving by a rounding that flickers as it pleases between two neighbours', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(0, 1), { minLength: 2, maxLength: 200 }),
        fc.boolean(),
        (flicker, gridKnown) => {
          expect(leaves(flicker, gridKnown)).toBe('rests');
        },
      ),
    );
  });
});
