import { describe, expect, it } from 'vitest';
import { type Setup, simulate } from '../../../scripts/simulated-seek.mjs';
import { mm } from '../../../src/model/units.ts';
import { home, onX, xSwitches } from './played.ts';
import { alarms, expectOn, kinds, run, toSwitch } from './watching.ts';

const watched = (setup: Partial<Setup>, axis = 'X') =>
  kinds(alarms(simulate({ acceleration: 300, ...onX(setup), axis }).readings, expectOn(axis)));

describe('while an axis seeks', () => {
  it('nothing is raised on its way to its switch, off it and on it again', () => {
    expect(watched({})).toEqual([]);
    expect(watched({ period: 100, jitter: 0.3, loss: 0.1, dither: 1 })).toEqual([]);
  });

  it('the wrong way is raised once', () => {
    expect(watched({ plan: run(1, 30) })).toEqual(['heads-away']);
  });

  it('the wrong way is raised though the step is unknown, as soon as three places in a row lie further out', () => {
    const { readings } = simulate({ ...onX({ plan: run(1, 30) }), acceleration: 300 });
    const [alarm] = alarms(readings, { ...expectOn('X'), gridKnown: false });
    expect(alarm?.kind).toBe('heads-away');
    expect(alarm?.position).toBeLessThan(1);
  });

  it('nothing is called the wrong way where nobody knows which end the switch stands at', () => {
    const { readings } = simulate({ ...onX({ plan: run(1, 30) }), acceleration: 300 });
    expect(alarms(readings, { ...expectOn('X'), toward: undefined })).toEqual([]);
  });

  it("another axis's switch, or the one at the far end, is raised by name", () => {
    const crossed = {
      'x-home': { when: () => false },
      'x-far': xSwitches['x-far'],
      'z-top': { actuates: 5, outwards: -1 },
    } as const;
    expect(watched({ plan: run(-1, 30), switches: crossed })).toEqual(['wrong-switch z-top']);
    expect(watched({ plan: run(-1, 40), sense: -1, stands: 280 })).toEqual(['wrong-switch x-far']);
  });

  it('a switch that was operated before it set off is not called the wrong one', () => {
    const held = { ...xSwitches, 'z-top': { when: () => true } };
    expect(watched({ switches: held })).toEqual([]);
  });

  it('going on past the trip is raised, stopping on it is not', () => {
    expect(watched({ plan: [{ wait: 500 }, toSwitch, { wait: 300 }] })).toEqual([]);
    expect(watched({ plan: run(-1, 40) })).toEqual(['pushes-on x-home']);
  });

  it('a slow stop is granted what its speed and braking need, no more', () => {
    // 15 mm/s at 70 mm/s2 runs on 1.6 mm; the file says 300 mm/s2 and 5 ms, 0.45 mm.
    const braked = { plan: [{ wait: 500 }, toSwitch, { wait: 300 }], acceleration: 70 };
    expect(watched(braked)).toEqual(['pushes-on x-home']);
    const { readings } = simulate(onX(braked));
    expect(kinds(alarms(readings, { ...expectOn('X'), acceleration: 70 }))).toEqual([]);
  });

  it('a switch that stays operated when backed off is raised', () => {
    const stuck = { ...xSwitches, 'x-home': { actuates: -2, frees: 10, outwards: -1 } } as const;
    expect(
      watched({ plan: [{ wait: 500 }, toSwitch, { by: 8, speed: 15 }, { wait: 300 }], switches: stuck }),
    ).toEqual(['stays-operated x-home']);
    expect(
      watched({ plan: [{ wait: 500 }, toSwitch, { by: 3, speed: 15 }, { wait: 300 }], switches: stuck }),
    ).toEqual([]);
  });

  it('coming off a switch it stood on is right, pushing into it is not', () => {
    const off = [
      { wait: 500 },
      { activity: 'homing', by: 3, speed: 15 },
      { wait: 100 },
      ...home(-1, 'x-home').slice(1),
    ] as const;
    expect(watched({ stands: -2.2, plan: off })).toEqual([]);
    expect(watched({ stands: -2.2, plan: run(-1, 5) })).toEqual(['pushes-on x-home']);
  });

  it('a trip that fell between two reports and a back-off are not called the wrong way', () => {
    const unseen = { ...xSwitches, 'x-home': { when: () => false } };
    const plan = [
      { wait: 500 },
      { activity: 'homing', way: -1, speed: 15, most: 22 },
      { by: 5, speed: 15 },
      { set: 0 },
      { wait: 500 },
    ] as const;
    expect(watched({ plan, switches: unseen })).toEqual([]);
    expect(
      watched({ plan: [...plan.slice(0, 2), { by: 15, speed: 15 }, { wait: 300 }], switches: unseen }),
    ).toEqual(['heads-away']);
  });

  it('a zero set anew, wherever it lies, is no motion', () => {
    for (const start of [-300, -30, -3, 3, 30, 300])
      for (const period of [10, 200]) expect(watched({ start, period })).toEqual([]);
  });

  it('a zero set while the switch is still operated does not make the way off it look wrong', () => {
    // At the trip it reads −4.5, −28, 3 and so on.
    for (const start of [17.5, -6, 6, 25, 50]) {
      const plan = [
        { wait: 1500 },
        toSwitch,
        { wait: 600 },
        { set: 0 },
        { wait: 300 },
        { by: 2, speed: 5 },
        { wait: 900 },
      ];
      expect(watched({ plan, start, period: 100 })).toEqual([]);
    }
  });

  it("a switch of an axis that homes at the same time is that axis's own trip, and may stay operated", () => {
    const { readings } = simulate({
      ...onX({ stands: 60, plan: run(-1, 50), switches: xSwitches }),
      acceleration: 300,
    });
    const together = (moves: boolean) =>
      readings.map((each, i) => ({
        ...each,
        axes: ['X', 'Z'],
        positions: [...each.positions, mm(moves ? Math.min(i, 60) * 0.2 : 0)],
        inputs: [...each.inputs, 'z-top'],
        levels: [...each.levels, i > 60 ? ('H' as const) : ('L' as const)],
        active: [...each.active, i > 60 ? ('1' as const) : ('0' as const)],
      }));
    expect(kinds(alarms(together(true)))).toEqual([]);
    expect(kinds(alarms(together(false)))).toEqual(['wrong-switch z-top']);
  });

  it("another axis's own trip excuses that trip, not the next one", () => {
    const { readings } = simulate({
      ...onX({ stands: 90, plan: run(-1, 80), switches: xSwitches }),
      acceleration: 300,
    });
    const more = readings.map((each, i) => {
      const isOperated = (i > 60 && i < 80) || i > 120;
      return {
        ...each,
        axes: ['X', 'Z'],
        positions: [...each.positions, mm(Math.min(i, 60) * 0.2)],
        inputs: [...each.inputs, 'z-top'],
        levels: [...each.levels, isOperated ? ('H' as const) : ('L' as const)],
        active: [...each.active, isOperated ? ('1' as const) : ('0' as const)],
      };
    });
    expect(kinds(alarms(more))).toEqual(['wrong-switch z-top']);
  });

  // Common practice, no source: Z homes to its top; downwards is toward the work.
  it('Z on its way down is raised', () => {
    const down = { plan: run(-1, 20), switches: { 'z-top': { actuates: 50 } } };
    expect(watched(down, 'Z')).toEqual(['heads-away']);
    const told = { ...expectOn('Z'), toward: -1, towardWork: -1 } as const;
    expect(kinds(alarms(simulate({ axis: 'Z', acceleration: 300, ...down }).readings, told))).toEqual([
      'heads-for-work',
    ]);
  });
});
