import { describe, expect, it } from 'vitest';
import { homingPlan, type PlanPart, simulate } from '../../../scripts/simulated-seek.mjs';
import { cutHoming } from '../../../src/diagnose/homing/cut.ts';
import { reactionOf } from '../../../src/diagnose/homing/reaction.ts';
import { offsetMoved, sideOffset, squarenessError } from '../../../src/diagnose/homing/side-offset.ts';
import { inputEdges } from '../../../src/diagnose/motion/edges.ts';
import { motionOf } from '../../../src/diagnose/motion/motion.ts';
import { mm } from '../../../src/model/units.ts';
import { windowOf } from '../motion/reports.ts';

const offsetSeen = (offset: number, seed = 1) => {
  const { readings } = simulate({
    plan: homingPlan({ way: -1, input: 'right', approach: 2 }),
    stands: 10,
    seed,
    switches: {
      left: { actuates: -2, frees: -1.6, outwards: -1 },
      right: { actuates: -2 - offset, frees: -1.6 - offset, outwards: -1 },
    },
  });
  const window = windowOf(readings);
  const motion = motionOf(window, 'X', { step: mm(0.0125) });
  const first = (input: string) =>
    inputEdges(window, input, motion, undefined).find(({ to }) => to === 'operated');
  return sideOffset(first('left'), first('right'));
};

describe('a beam with a motor and a switch on either side', () => {
  it('is told how far apart its sides tripped', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const offset = offsetSeen(0.5, seed);
      expect(offset?.low).toBeLessThanOrEqual(-0.5 + 0.02);
      expect(offset?.high).toBeGreaterThanOrEqual(-0.5 - 0.02);
    }
  });

  it('has lost steps on one side only where the offset certainly moved', () => {
    const [before, same, after] = [offsetSeen(0.5), offsetSeen(0.51, 2), offsetSeen(1.2, 3)];
    if (!before || !same || !after) throw new Error('three offsets');
    expect([offsetMoved(before, same), offsetMoved(before, after)]).toEqual([false, true]);
  });

  it('is out of square by the angle whose tangent is the offset over the beam', () => {
    // arctan(1.745/1000) is a tenth of a degree.
    const { low, high } = squarenessError({ low: mm(1.7453), high: mm(1.7453) }, mm(1000));
    expect([low, high]).toEqual([expect.closeTo(0.1, 4), expect.closeTo(0.1, 4)]);
    expect(() => squarenessError({ low: mm(0), high: mm(1) }, mm(0))).toThrow(RangeError);
  });
});

describe('a reported input', () => {
  const reaction = (...after: readonly PlanPart[]) => {
    const { readings } = simulate({
      plan: [{ wait: 400 }, ...after, { wait: 400 }],
      stands: 10,
      acceleration: 300,
      switches: { home: { actuates: -2, outwards: -1 } },
    });
    const window = windowOf(readings);
    const motion = motionOf(window, 'X', { step: mm(0.0125) });
    return reactionOf(cutHoming({ window, motion, input: 'home' }), mm(1));
  };
  const toSwitch: PlanPart = { way: -1, speed: 10, until: 'home', activity: 'moving' };

  it('was acted on where the axis turned, stopped or went into fault at it', () => {
    expect(reaction(toSwitch, { wait: 200 }, { by: 2, speed: 5 })).toBe('acted');
    expect(reaction(toSwitch, { activity: 'still' })).toBe('acted');
    expect(reaction(toSwitch, { activity: 'fault' })).toBe('acted');
  });

  it('was not acted on where the axis went on over it', () => {
    expect(reaction({ way: -1, speed: 10, most: 20 })).toBe('not-acted-on');
  });

  it('was not tested where it never tripped', () => {
    expect(reaction({ way: -1, speed: 10, most: 5 })).toBe('not-tested');
  });
});
