import { describe, expect, it } from 'vitest';
import { type PlanPart, simulate } from '../../../scripts/simulated-seek.mjs';
import { cutHoming } from '../../../src/diagnose/homing/cut.ts';
import { type AxisHoming, orderIssues, orderSeen } from '../../../src/diagnose/homing/order.ts';
import { referenceLost, zeroSetIn } from '../../../src/diagnose/homing/reference.ts';
import { motionOf } from '../../../src/diagnose/motion/motion.ts';
import type { Reading } from '../../../src/model/reading.ts';
import { mm } from '../../../src/model/units.ts';
import { report, windowOf } from '../motion/reports.ts';
import { machineFrom } from '../stage.ts';

const machine = machineFrom(`machine: Order
axes:
  X: { homes: negative, home order: 2 }
  Y: { homes: negative, home order: 2 }
  Z: { homes: positive, home order: 1 }
inputs: {}
`);

/** An axis that waits, runs for a second and trips at the end of it. */
function homing(letter: string, waits: number): AxisHoming {
  const axis = machine.axes.find((each) => each.letter === letter);
  if (!axis) throw new Error('axis');
  const way = axis.homes === 'positive' ? 1 : -1;
  const plan: PlanPart[] = [
    { wait: waits },
    { way, speed: 10, until: 'home', most: 50 },
    { by: -way * 2, speed: 5 },
    { wait: 500 },
  ];
  const { readings } = simulate({
    axis: letter,
    plan,
    switches: { home: { actuates: way * 10, outwards: way } },
  });
  const window = windowOf(readings);
  const motion = motionOf(window, letter, { step: mm(0.0125) });
  return { axis, motion, cycle: cutHoming({ window, motion, input: 'home' }) };
}

describe('the order in which axes home', () => {
  it('is that in which they set off', () => {
    expect(
      orderSeen([homing('X', 3000), homing('Y', 3100), homing('Z', 500)]).map(({ axis }) => axis),
    ).toEqual(['Z', 'X', 'Y']);
  });

  // Common practice, no source: Z first on a mill or router.
  it('has Z at its top before anything crosses the work', () => {
    expect(orderIssues([homing('Z', 500), homing('X', 3000), homing('Y', 3000)])).toEqual([]);
    expect(orderIssues([homing('Z', 2000), homing('X', 500)])).toEqual([
      { kind: 'before-z-is-up', axis: 'X' },
      { kind: 'unlike-declared', axis: 'X', before: 'Z' },
    ]);
  });

  it('is wrong where X sets off after Z did but before Z has found its switch', () => {
    expect(orderIssues([homing('Z', 500), homing('X', 900)])).toEqual([
      { kind: 'before-z-is-up', axis: 'X' },
    ]);
  });

  it('may have two axes of the same place go together', () => {
    expect(orderIssues([homing('X', 500), homing('Y', 520)])).toEqual([]);
  });
});

// Common practice, no source: only homing may change machine zero, and only until something is lost.
describe('a machine zero is trusted until', () => {
  const quiet = [0, 20, 40].map((at) => report(at, 5, { activity: 'still' }));
  const loss = (...more: readonly Reading[]) =>
    referenceLost([...quiet, ...more], (each) => each.active[0] === '1')?.why;

  it('nothing happens', () => {
    expect(loss(report(60, 6, { activity: 'moving' }), report(80, 7))).toBeUndefined();
  });

  it('the controller restarts, or the stream breaks off', () => {
    const gap = { kind: 'gap', arrived: report(60, 0).arrived, segment: 2 } as const;
    expect(loss({ ...gap, why: 'controller-restarted' })).toBe('controller-restarted');
    expect(loss({ ...gap, why: 'lost-port' })).toBe('stream-broke-off');
  });

  it('a fault', () => {
    expect(loss(report(60, 5, { activity: 'fault' }))).toBe('fault');
  });

  it('a stop in the middle of a move, but not one at rest', () => {
    expect(
      loss(report(60, 6, { activity: 'moving' }), report(80, 6.2, { activity: 'moving', home: true })),
    ).toBe('stopped-while-moving');
    expect(loss(report(60, 5, { activity: 'still', home: true }))).toBeUndefined();
  });
});

// Common practice, no source: only homing may change machine zero.
describe('a machine zero set anew', () => {
  const [x] = machine.axes;
  if (!x) throw new Error('axis');
  const set = (activity: 'still' | 'homing') => {
    const plan: PlanPart[] = [
      { wait: 300 },
      { activity, wait: 100 },
      { set: 40 },
      { activity: 'still', wait: 300 },
    ];
    const window = windowOf(simulate({ plan }).readings);
    return zeroSetIn(window, x);
  };

  it('by a homing is as it should be, and without one is told', () => {
    expect(set('homing')).toBe(false);
    expect(set('still')).toBe(true);
  });

  it('is not what a new segment begins with', () => {
    const window = windowOf([
      report(0, 5, { activity: 'still' }),
      report(20, 90, { activity: 'still', segment: 2 }),
    ]);
    expect(zeroSetIn(window, x)).toBe(false);
  });
});
