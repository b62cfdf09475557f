import { describe, expect, it } from 'vitest';
import { contact, line, machineFrom, play, type Truth } from './stage.ts';

const machine = machineFrom(`machine: One switch
inputs:
  x-home: { duty: [home], contact: normally closed, voltage: 5 V }
axes: { X: { travel: 300 } }
`);

/** Its line opens and closes again for 200 ms in the middle of the presses whose numbers are given. */
function slipping(...unclean: readonly number[]): Truth {
  const sound = contact('x-home', 'normally closed', 'open');
  let [presses, since, was]: [number, number, boolean] = [0, 0, false];
  const operated = (world: Parameters<Truth['level']>[0]): boolean => {
    const now = world.pressed.has('x-home');
    if (now && !was) [presses, since] = [presses + 1, world.time];
    was = now;
    const held = world.time - since;
    return now && !(unclean.includes(presses) && held > 400 && held < 600);
  };
  const seen = (world: Parameters<Truth['level']>[0]) => ({
    ...world,
    pressed: operated(world) ? world.pressed : new Set<string>(),
  });
  return { level: (world) => sound.level(seen(world)), active: (world) => sound.active(seen(world)) };
}

const pressing = (truth: Truth) => {
  const { verdicts, asks } = play({ machine, truths: { 'x-home': truth }, checks: ['rest', 'press'] });
  return {
    said: verdicts.filter(({ check }) => check === 'press').map(line),
    presses: asks.filter(({ action }) => action === 'press').length,
  };
};

describe('a press that went to and fro', () => {
  it('once may be a finger that slipped: three clean presses after it prove the switch', () => {
    expect(pressing(slipping(2))).toEqual({ said: ['press x-home: proved'], presses: 6 });
  });

  it('and once more is the contact or its wire, and no more presses are asked for', () => {
    expect(pressing(slipping(1, 4))).toEqual({ said: ['press x-home: limited chatters'], presses: 4 });
  });

  it('twice in three is the contact or its wire', () => {
    expect(pressing(slipping(1, 3))).toEqual({ said: ['press x-home: limited chatters'], presses: 3 });
  });

  it('never: three presses are enough', () => {
    expect(pressing(slipping())).toEqual({ said: ['press x-home: proved'], presses: 3 });
  });
});
