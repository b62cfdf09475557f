import { describe, expect, it } from 'vitest';
import { homingPlan, type PlanPart, type Setup, simulate } from '../../../scripts/simulated-seek.mjs';
import { cutHoming } from '../../../src/diagnose/homing/cut.ts';
import type { HomingCycle } from '../../../src/diagnose/homing/cycle.ts';
import { judgeHoming } from '../../../src/diagnose/homing/judge.ts';
import type { Interval } from '../../../src/diagnose/motion/interval.ts';
import { motionOf } from '../../../src/diagnose/motion/motion.ts';
import type { Reading } from '../../../src/model/reading.ts';
import { mm } from '../../../src/model/units.ts';
import { windowOf } from '../motion/reports.ts';

const contains = ({ low, high }: Interval, value: number): boolean => value >= low && value <= high;

/** X stands 20 mm from its zero; its switch trips at −2 and frees at −1.6 of true position, −22 and −21.6 as counted from where it stood. */
const healthy: Setup = {
  plan: homingPlan({ way: -1, input: 'x-home' }),
  stands: 20,
  acceleration: 300,
  switches: { 'x-home': { actuates: -2, frees: -1.6, outwards: -1 } },
};

const cycleOf = (setup: Partial<Setup>, change = (readings: readonly Reading[]) => readings): HomingCycle => {
  const all = { ...healthy, ...setup };
  const window = windowOf(change(simulate(all).readings));
  const motion = motionOf(window, 'X', {
    step: mm(all.step ?? 0.0125),
    rapid: 3600,
    acceleration: all.acceleration,
  });
  return cutHoming({ window, motion, input: 'x-home', homeValue: mm(0) });
};
const kinds = (cycle: HomingCycle, overtravel?: number) =>
  judgeHoming(cycle, overtravel === undefined ? undefined : mm(overtravel)).issues.map(({ kind }) => kind);
const holds = (interval: Interval | undefined, value: number, within = 0.02) =>
  interval !== undefined && contains({ low: interval.low - within, high: interval.high + within }, value);

/** Run to the switch, then as told. */
const then = (...parts: readonly PlanPart[]): readonly PlanPart[] => [
  { wait: 500 },
  { activity: 'homing', way: -1, speed: 15, until: 'x-home', most: 60 },
  ...parts,
];

describe('a homing from approach to zero', () => {
  it.each([
    ['a report every 20 ms', {}],
    ['a report every 5 ms', { period: 5 }],
    ['ten a second', { period: 100 }],
    ['late and lost reports and a flickering last digit', { jitter: 0.3, loss: 0.15, dither: 1 }],
  ])('shows all its parts, each holding the truth, with %s', (_, trouble) => {
    const period = 'period' in trouble ? trouble.period : 20;
    for (let seed = 1; seed <= 20; seed++) {
      const cycle = cycleOf({ seed, ...trouble });
      const { figures, whole, issues } = judgeHoming(cycle);
      expect([whole, issues]).toEqual([true, []]);
      expect(cycle.start.condition).toBe('free');
      expect(figures.way).toBe(-1);
      expect(Math.abs((figures.approachSpeed?.value ?? 0) - 15)).toBeLessThan(0.7);
      expect(Math.abs((figures.slowSpeed?.value ?? 0) - 1)).toBeLessThan(0.1);
      // Only reports close enough together show its ramps; then they show what the machine was given.
      if (figures.acceleration) expect(contains(figures.acceleration, 300)).toBe(true);
      expect(figures.acceleration !== undefined || period > 10).toBe(true);
      expect(holds(figures.trip, -22)).toBe(true);
      expect(holds(figures.slowTrip, -22)).toBe(true);
      // v²/2a: 15²/600 = 0.375 mm past the trip, and as much as one tick of the simulated controller, 0.0075 mm.
      expect(holds(figures.stopDistance, 0.375)).toBe(true);
      expect(holds(figures.backOff, 2)).toBe(true);
      expect(holds(figures.release, 2)).toBe(true);
      expect(holds(figures.differential, 0.4)).toBe(true);
      // Zero 2 mm inside the trip: what read −20 reads 0.
      expect(holds(figures.shift, 20)).toBe(true);
    }
  });

  it('repeated in a frame that already agrees sets its zero without a jump', () => {
    const cycle = cycleOf({ stands: 30, start: 30 });
    expect(cycle.zero).toMatchObject({ kind: 'agrees', at: expect.closeTo(0, 2) });
    expect(judgeHoming(cycle).figures.shift).toEqual({ low: 0, high: 0 });
  });

  it('repeated after lost steps shifts by what was lost', () => {
    // The motor stood 0.7 mm nearer to the switch than its controller counted.
    const cycle = cycleOf({ stands: 29.3, start: 30 });
    expect(holds(judgeHoming(cycle).figures.shift, -0.7)).toBe(true);
  });

  it('of one touch has no slow approach', () => {
    const cycle = cycleOf({ plan: then({ by: 2, speed: 5 }, { set: 0, activity: 'still' }, { wait: 500 }) });
    expect(cycle.slowApproach).toBeUndefined();
    expect(judgeHoming(cycle)).toMatchObject({ whole: true, issues: [] });
  });

  it('that begins on its switch comes off it first', () => {
    const plan = homingPlan({ way: -1, input: 'x-home' });
    const cycle = cycleOf({
      stands: -2.2,
      plan: [{ wait: 500 }, { activity: 'homing', by: 3, speed: 15 }, { wait: 150 }, ...plan.slice(1)],
    });
    expect(cycle.start.condition).toBe('operated');
    expect([cycle.freed?.direction, cycle.approach?.direction]).toEqual([1, -1]);
    expect(kinds(cycle)).toEqual(['pressed-at-start']);
  });
});

describe('a homing that goes wrong', () => {
  it.each<[string, Partial<Setup>, readonly string[]]>([
    [
      'never finds its switch',
      {
        plan: [
          { wait: 500 },
          { activity: 'homing', way: -1, speed: 15, most: 15 },
          { activity: 'fault', wait: 500 },
        ],
      },
      ['no-trip', 'ends-in-fault'],
    ],
    [
      'stops on its switch and does not turn',
      { plan: then({ activity: 'fault', wait: 500 }) },
      ['no-reversal', 'ends-in-fault'],
    ],
    [
      'backs off less than the switch takes to free',
      { plan: then({ by: 0.5, speed: 5 }, { activity: 'fault', wait: 500 }) },
      ['does-not-clear', 'ends-in-fault'],
    ],
    [
      'misses the second trip',
      { plan: then({ by: 2, speed: 15 }, { by: -0.8, speed: 1 }, { activity: 'fault', wait: 500 }) },
      ['slow-trip-missed', 'ends-in-fault'],
    ],
    [
      'goes as fast the second time',
      { plan: [...homingPlan({ way: -1, input: 'x-home', slow: 25 })] },
      ['slow-not-slower'],
    ],
    [
      'ends without a zero',
      { plan: homingPlan({ way: -1, input: 'x-home' }).filter((part) => part.set === undefined) },
      ['zero-not-set'],
    ],
    [
      'was never made: the number was set where it stood',
      {
        start: 17,
        plan: [{ wait: 500 }, { activity: 'homing', wait: 40 }, { set: 0, activity: 'still' }, { wait: 500 }],
      },
      ['zeroed-in-place'],
    ],
  ])('%s', (_, setup, expected) => {
    expect(kinds(cycleOf(setup))).toEqual(expected);
  });

  it('runs past what its switch may be driven, by what is certain', () => {
    // 0.375 mm past the trip where 0.2 mm are allowed.
    const { issues } = judgeHoming(cycleOf({ period: 5 }), mm(0.2));
    expect(issues).toMatchObject([{ kind: 'overruns' }]);
    expect(issues[0]?.by).toBeGreaterThan(0.05);
    expect(issues[0]?.by).toBeLessThanOrEqual(0.19);
    expect(kinds(cycleOf({ period: 5 }), 3)).toEqual([]);
    // Ten reports a second leave it open by more than a millimetre.
    expect(kinds(cycleOf({ period: 100, seed: 3 }), 0.38)).toEqual([]);
  });

  it('may have tripped between two reports where it turned and was zeroed: inferred, not seen', () => {
    const never: Setup['switches'] = { 'x-home': { when: () => false } };
    const plan = [
      { wait: 900 },
      { activity: 'homing', way: -1, speed: 15, most: 22 },
      { by: 2, speed: 15 },
      { set: 0, activity: 'still' },
      { wait: 900 },
    ] as const;
    expect(kinds(cycleOf({ plan, switches: never ?? {} }))).toEqual(['inferred-trip']);
  });

  it('says nothing where the stream broke off in it', () => {
    const cycle = cycleOf({}, (readings) => {
      const at = readings[120]?.arrived ?? readings[0]?.arrived;
      if (at === undefined) throw new Error('readings');
      const gap = { kind: 'gap', arrived: at, segment: 2, why: 'lost-port' } as const;
      return [
        ...readings.slice(0, 120),
        gap,
        ...readings.slice(120).map((each) => ({ ...each, segment: 2 })),
      ];
    });
    expect(judgeHoming(cycle)).toMatchObject({ unseen: true, whole: false, issues: [] });
  });
});
