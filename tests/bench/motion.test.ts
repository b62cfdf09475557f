import { describe, expect, it } from 'vitest';
import { scenario } from '../../src/bench/scenario.ts';
import { stand } from './stand.ts';

const dogOf = (input: string) => {
  const dog = scenario.inputs.find(({ name }) => name === input)?.switches[0]?.dog;
  if (!dog) throw new Error(`${input} has no dog`);
  return dog;
};

describe('an axis', () => {
  it('moves as commanded, and its report says so while it moves', () => {
    const { bench, wait, last } = stand();
    const before = bench.eyes.position('X');
    bench.move('X', 30);
    wait(100);
    expect(last().activity).toBe('moving');
    wait(2000);
    expect(last().activity).toBe('still');
    expect(last().positions[0]).toBeCloseTo(30, 3);
    expect(bench.eyes.position('X') - before).toBeCloseTo(30, 6);
  });

  it('stands still without drive power while the controller counts on: positions are commanded, not measured', () => {
    const { bench, wait, last } = stand();
    bench.power('motors', 'off');
    const before = bench.eyes.position('Y');
    bench.move('Y', -12);
    wait(1000);
    expect(last().positions[1]).toBeCloseTo(-12, 3);
    expect(bench.eyes.position('Y')).toBe(before);
  });

  it('works its switch at one place and frees it at another, nearer the middle', () => {
    const { bench, wait, level } = stand();
    const { actuates, frees } = dogOf('x-far');
    const goTo = (place: number) => {
      // Onto a limit the controller halts, as it should.
      bench.clear();
      bench.move('X', place - bench.eyes.position('X'));
      wait(20_000);
      return level('x-far');
    };
    expect(frees).toBeLessThan(actuates);
    expect(goTo(actuates - 0.05)).toBe('L');
    expect(goTo(actuates + 0.05)).toBe('H');
    expect(goTo((actuates + frees) / 2)).toBe('H');
    expect(goTo(frees - 0.05)).toBe('L');
    expect(goTo((actuates + frees) / 2)).toBe('L');
  });

  it('is stopped by metal, not by the controller', () => {
    const { bench, wait, last } = stand();
    bench.move('Z', -500);
    wait(60_000);
    expect(bench.eyes.position('Z')).toBe(-94);
    expect(last().positions[2]).toBeCloseTo(-500, 3);
  });

  it('stops at once when the stop is pressed', () => {
    const { bench, wait, last } = stand();
    bench.move('X', 300);
    wait(500);
    bench.press('stop');
    wait(100);
    const { positions, activity } = last();
    wait(1000);
    expect(activity).toBe('still');
    expect(last().positions).toEqual(positions);
  });
});

describe('homing', () => {
  it('approaches, trips, backs off, trips again slowly, releases, and counts from the home value', () => {
    const { bench, wait, told, last, names } = stand();
    bench.home('X');
    wait(60_000);
    expect(last()).toMatchObject({ activity: 'still', levels: 'LLLLLLLL' });
    expect(last().positions[0]).toBe(0);
    const index = names().indexOf('x-home');
    const trips = told().filter(
      ({ active }, i) => active[index] === '1' && told()[i - 1]?.active[index] === '0',
    );
    expect(trips).toHaveLength(2);
    // Slow approach at 2 mm/s: the trip is told within bounce, debounce and one report of the actuation point.
    expect(Math.abs(bench.eyes.position('X') - (dogOf('x-home').actuates + 3))).toBeLessThan(0.05);
  });

  it('brings all axes home, the spindle up first', () => {
    const { bench, wait, last, told } = stand();
    bench.home('all');
    wait(120_000);
    expect(last()).toMatchObject({ activity: 'still', positions: [0, 0, 0] });
    const moved = (axis: number) => told().findIndex(({ positions }) => positions[axis] !== 0);
    expect(moved(2)).toBeLessThan(moved(0));
  });

  it('of axes that share a place in the order goes at the same time, where the machine has it so', () => {
    const both = (homesAtOnce: boolean) => {
      const { bench, settle, last, told } = stand({ truth: { ...scenario, homesAtOnce } });
      bench.home('all');
      settle();
      expect(last()).toMatchObject({ activity: 'still', positions: [0, 0, 0] });
      const reports = told();
      return reports.filter((each, i) => {
        const before = reports[i - 1];
        return before && [0, 1].every((axis) => before.positions[axis] !== each.positions[axis]);
      }).length;
    };
    // Y has 160 mm to go at 15 mm/s: ten seconds at a hundred reports each, less the moments at rest.
    expect(both(true)).toBeGreaterThan(900);
    expect(both(false)).toBe(0);
  });

  it('runs on past a switch whose wires are crossed and ends in a fault, in which nothing else starts until it is cleared', () => {
    const { bench, wait, last } = stand({ faults: ['crossed:x-home,probe'] });
    bench.seek('X');
    wait(120_000);
    expect(last().activity).toBe('fault');
    expect(bench.eyes.position('X')).toBe(-12);
    const { positions } = last();
    bench.move('X', 10);
    wait(1000);
    expect(last().positions).toEqual(positions);
    bench.clear();
    bench.move('X', 10);
    wait(1000);
    expect(last().positions).not.toEqual(positions);
  });
});

describe('an axis that stands on its switch', () => {
  it('is seen to touch it, and is moved off by hand with the drives off', () => {
    const { bench, wait, active } = stand({ faults: ['held-at-rest:x-home'] });
    wait(100);
    expect([active('x-home'), bench.eyes.touched('x-home')]).toEqual(['1', true]);
    bench.power('motors', 'off');
    bench.release('x-home');
    wait(100);
    expect([active('x-home'), bench.eyes.touched('x-home')]).toEqual(['0', false]);
  });

  it('is moved off by the controller with the drives on', () => {
    const { bench, wait, active, last } = stand({ faults: ['held-at-rest:x-home'] });
    wait(100);
    bench.release('x-home');
    wait(3000);
    expect(active('x-home')).toBe('0');
    expect(last().positions[0]).toBeCloseTo(5, 3);
  });
});
