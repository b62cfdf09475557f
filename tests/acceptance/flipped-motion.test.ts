import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Ask } from '../../src/model/ask.ts';
import { flipped, flippedPort } from './flipped-motion.ts';
import { dangersIn, type MotionCase, motionSession } from './motion-bench.ts';

/** Nobody looks which way the tool goes, and nobody hears a warning: both sessions get the same bytes but for the sign. */
const unsure = {
  ignoresDanger: true,
  saysInstead: (ask: Ask) =>
    ask.action === 'look' && ask.topic === 'direction' ? ('not-sure' as const) : undefined,
};

const headsAway = async (given: MotionCase): Promise<boolean> => {
  const outcome = await motionSession({ ...given, checks: ['press', 'stop', 'seek'] });
  return dangersIn(outcome).includes('X heads-away');
};

describe('the sign of motion', () => {
  it('is all that is turned in a sentence', () => {
    // XOR over the bytes between dollar and star, by hand: only signs change, and each minus is 2D.
    expect(flipped('$PTWRS,1,20,moving,LH,01,-3.25,0,7*00\r\n')).toMatch(
      /^\$PTWRS,1,20,moving,LH,01,3\.25,0,-7\*[0-9A-F]{2}\r\n$/,
    );
    const [a, b] = ['$PTWRS,1,20,still,L,0,-5*', '$PTWRS,1,20,still,L,0,5*'].map((body) =>
      Number.parseInt(flipped(`${body}00`).slice(-2), 16),
    );
    expect((a ?? 0) ^ (b ?? 0)).toBe(0x2d);
    expect(flipped('$PTWRD,1,mm,XYZ,x-home*5A\r\n')).toBe('$PTWRD,1,mm,XYZ,x-home*5A\r\n');
  });

  it('decides alone which seeks are warned of: those that were are not, and those that were not are', async () => {
    const ways = fc.constantFrom(undefined, 'home-end-wrong:X', 'direction-inverted:X', 'mirrored:X');
    const cases = fc.record({
      fault: ways,
      x: fc.integer({ min: 20, max: 120 }),
      seed: fc.integer({ min: 1, max: 999 }),
    });
    await fc.assert(
      fc.asyncProperty(cases, async ({ fault, x, seed }) => {
        const given = { ...(fault && { fault }), stands: { X: x }, seed, hands: unsure };
        const [here, there] = [await headsAway(given), await headsAway({ ...given, through: flippedPort })];
        // The commands alone: set to seek the positive end, or not. What the metal does is not in them.
        expect([here, there]).toEqual(
          fault === 'home-end-wrong:X' || fault === 'mirrored:X' ? [true, false] : [false, true],
        );
      }),
      { numRuns: 20 },
    );
  }, 120_000);
});
