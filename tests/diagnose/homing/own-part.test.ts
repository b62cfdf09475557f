import { describe, expect, it } from 'vitest';
import { type PlanPart, type Setup, simulate } from '../../../scripts/simulated-seek.mjs';
import { ownPart } from '../../../src/diagnose/homing/own-part.ts';
import { motionOf } from '../../../src/diagnose/motion/motion.ts';
import { expectationOf } from '../../../src/diagnose/seek/expect.ts';
import { SeekGuard } from '../../../src/diagnose/seek/guard.ts';
import { judgeSeek } from '../../../src/diagnose/seek/judge.ts';
import { seekRun } from '../../../src/diagnose/seek/run.ts';
import type { Window } from '../../../src/model/procedure.ts';
import type { StatusReading } from '../../../src/model/reading.ts';
import { mm, ms } from '../../../src/model/units.ts';
import { home, rolesOf, windowOf, xSwitches } from '../seek/played.ts';

const zSwitches = { 'z-top': { actuates: 2, frees: 1.6, outwards: 1 } } as const;
const simulated = (axis: string, setup: Partial<Setup> & Pick<Setup, 'plan'>) =>
  simulate({ axis, acceleration: 300, ...setup }).readings;
const x = (...before: readonly PlanPart[]) =>
  simulated('X', { plan: [...before, ...home(-1, 'x-home')], stands: 20, switches: xSwitches });
const z = (...before: readonly PlanPart[]) =>
  simulated('Z', { plan: [...before, ...home(1, 'z-top')], stands: -20, switches: zSwitches });

/** One stream of both: each report tells of all, and whoever is done goes on standing where it stands. */
function together(one: readonly StatusReading[], other: readonly StatusReading[]): Window {
  const readings = Array.from({ length: Math.max(one.length, other.length) }, (_, i) => {
    const [a, b] = [one[i] ?? one.at(-1), other[i] ?? other.at(-1)];
    const timed = one[i] ?? other[i];
    if (!a || !b || !timed) throw new Error('no report');
    const busy = [one[i], other[i]].find((each) => each !== undefined && each.activity !== 'still');
    return {
      ...timed,
      axes: [...a.axes, ...b.axes],
      positions: [...a.positions, ...b.positions],
      inputs: [...a.inputs, ...b.inputs],
      levels: [...a.levels, ...b.levels],
      active: [...a.active, ...b.active],
      activity: busy?.activity ?? ('still' as const),
    };
  });
  return windowOf(readings);
}

const abilities = { step: mm(0.0125), rapid: undefined, acceleration: 300 };
const motionIn = (window: Window, axis: string) => motionOf(window, axis, abilities);
const partOf = (window: Window, axis: 'X' | 'Z') =>
  ownPart(window, motionIn(window, axis), [motionIn(window, axis === 'X' ? 'Z' : 'X')]);

function judged(window: Window, axis: 'X' | 'Z') {
  const part = partOf(window, axis);
  if (!part) throw new Error(`${axis} has no part`);
  const roles = rolesOf(axis);
  const answers = { tool: axis === 'X' ? 'negative' : 'positive', reached: 'yes' } as const;
  const run = seekRun({ window: part, roles, abilities, rest: {} });
  return { run, ...judgeSeek({ roles, runs: [run], mapProved: true, answers }) };
}

const alarmsIn = ({ readings }: Window) => {
  const watches = (['X', 'Z'] as const).map((axis) => ({
    axis,
    expectation: expectationOf(rolesOf(axis), { rest: {}, step: mm(0.0125), gridKnown: true }),
  }));
  const guard = new SeekGuard(watches);
  return readings.flatMap((reading) => guard.feed(reading));
};

const inTurn = () => {
  const first = z();
  return together(first, x({ wait: ms(first.at(-1)?.at ?? 0) }));
};

describe('axes that home under one ask', () => {
  it('one after the other: each has its own part, from where the one before stands to where the next sets off', () => {
    const window = inTurn();
    const [ofZ, ofX] = [partOf(window, 'Z'), partOf(window, 'X')];
    if (!ofZ || !ofX) throw new Error('two parts');
    // X stands all through the part of Z, but for as long as it takes to see that Z has come to rest.
    const elsewhere = ({ readings }: Window, axis: number, than: number) =>
      readings.filter((each) => each.kind === 'status' && each.positions[axis] !== than).length;
    expect(elsewhere(ofZ, 1, 0)).toBeLessThan(10);
    expect(elsewhere(ofX, 0, 0)).toBeLessThan(2);
    expect(ofX.lead).toBeDefined();
    for (const axis of ['X', 'Z'] as const) expect(judged(window, axis).own, axis).toContain('healthy');
    expect(alarmsIn(window)).toEqual([]);
  });

  it('at the same time: each is sound, and no other’s switch is a wrong one', () => {
    const window = together(z(), x());
    for (const axis of ['X', 'Z'] as const) {
      const { own, run } = judged(window, axis);
      expect(own, axis).toContain('healthy');
      expect(run.strayTrips).toEqual([]);
    }
    expect(alarmsIn(window)).toEqual([]);
  });

  it('at the same time, one sent the wrong way: that one is warned of, and only that one', () => {
    const away = simulated('X', {
      plan: [{ wait: 500 }, { activity: 'homing', way: 1, speed: 15, most: 30 }, { wait: 300 }],
      stands: 20,
      switches: xSwitches,
    });
    expect(alarmsIn(together(z(), away))).toEqual([{ axis: 'X', finding: 'heads-away' }]);
  });

  it('an axis that nothing changed of has no part in it', () => {
    const stays = simulated('X', { plan: [{ wait: 3000 }], stands: 20, switches: xSwitches });
    expect(partOf(together(z(), stays), 'X')).toBeUndefined();
  });
});
