import { describe, expect, it } from 'vitest';
import { stand } from './stand.ts';
import { homed, index, toldActive } from './watched.ts';

/** Where it really trips, by the count just told, in one homing after the other; its own zero taken out. */
function tripsInARow(fault: readonly string[], times: number): readonly number[] {
  const at = stand({ faults: fault });
  return Array.from({ length: times }, () => {
    at.bench.home('X');
    at.settle();
    // Where it stands when homed is its slow trip less its back-off of 3 mm.
    return at.bench.eyes.position('X') - 3;
  });
}

const spread = (places: readonly number[]) => Math.max(...places) - Math.min(...places);

describe('where a dog meets its switch', () => {
  it('a sound one trips in one place, again and again', () => {
    const places = tripsInARow([], 6);
    expect(spread(places)).toBeLessThan(0.05);
    expect(places[0]).toBeCloseTo(-3, 1);
  });

  it('beyond-dog:x-home: past its dog its switch is free; sent to it, it finds only metal', () => {
    const { active, bench, wait } = stand({ faults: ['beyond-dog:x-home'] });
    wait(50);
    expect(active('x-home')).toBe('0');
    expect(bench.eyes.isPastSwitch('X')).toBe(true);
    const { eyes, last } = homed('beyond-dog:x-home');
    expect([eyes.position('X'), eyes.reached('X'), eyes.isPastSwitch('X')]).toEqual([-12, false, true]);
    expect(last().activity).toBe('fault');
  });

  it('late-release:x-home: it moved back by its back-off and is still operated', () => {
    const { eyes, active, last } = homed('late-release:x-home');
    expect([active('x-home'), last().activity]).toEqual(['1', 'fault']);
    expect(Math.abs(eyes.position('X'))).toBeLessThan(0.2);
    expect(eyes.cameBack('X')).toBe(true);
    expect(eyes.isIn('x-home')).toBe(true);
  });

  it('dog-slips:x-home: each trip further out than the one before', () => {
    const places = tripsInARow(['dog-slips:x-home'], 5);
    for (const [i, place] of places.entries())
      if (i > 0) expect(place).toBeLessThan((places[i - 1] ?? 0) - 0.1);
  });

  it('bracket-loose:x-home: trips scattered within a millimetre, on either side', () => {
    const places = tripsInARow(['bracket-loose:x-home'], 8);
    expect(spread(places)).toBeGreaterThan(0.25);
    expect(spread(places)).toBeLessThan(1.1);
    const ways = places.slice(1).map((place, i) => Math.sign(place - (places[i] ?? place)));
    expect(new Set(ways).size).toBe(2);
  });

  it('lost-at-speed:x-home: the axis passes its switch and nobody notices; slowly it is noticed', () => {
    const at = homed('lost-at-speed:x-home');
    expect(toldActive(at, 'x-home')).toHaveLength(0);
    expect([at.eyes.reached('X'), at.eyes.isPastSwitch('X'), at.eyes.position('X')]).toEqual([
      true,
      true,
      -12,
    ]);
    const slow = stand({ faults: ['lost-at-speed:x-home'] });
    slow.bench.move('X', -240, 5);
    slow.settle();
    expect(slow.last().activity).toBe('fault');
  });

  it('flutters-slow:x-home: found at speed, not found on the slow approach', () => {
    const at = homed('flutters-slow:x-home');
    const trips = at
      .told()
      .filter(({ active }, i, all) => active[0] === '1' && all[i - 1]?.active[0] === '0');
    expect(trips).toHaveLength(1);
    expect([at.eyes.isIn('x-home'), at.last().activity]).toEqual([true, 'fault']);
  });

  it('at-other-end:x-home: it trips at the far end', () => {
    const { bench, settle, active } = stand({ faults: ['at-other-end:x-home'] });
    bench.move('X', 500);
    settle();
    expect([active('x-home'), active('x-far')]).toEqual(['1', '1']);
    expect(homed('at-other-end:x-home').eyes.reached('X')).toBe(false);
  });
});

describe('a beam with two motors', () => {
  it('side-reversed:Y: the beam racks as far as it gives, and one side never finds its switch', () => {
    const { eyes, last } = homed('side-reversed:Y', 'Y');
    expect([eyes.racked('Y'), last().activity]).toEqual([true, 'fault']);
  });

  it('side-off:Y: the second side is dragged along behind', () => {
    const { eyes, bench } = homed('side-off:Y', 'Y');
    expect([eyes.racked('Y'), eyes.wayOf('Y')]).toEqual([true, 'negative']);
    expect(bench.eyes.buzzed('Y')).toBe(false);
  });

  it('side-ahead:Y: it stands racked and is squared by its homing, each side at its own switch', () => {
    const { bench } = stand({ faults: ['side-ahead:Y'] });
    bench.eyes.watch();
    expect(bench.eyes.racked('Y')).toBe(true);
    const { eyes, last } = homed('side-ahead:Y', 'Y');
    expect(last().positions[index.Y]).toBe(0);
    eyes.watch();
    expect(eyes.racked('Y')).toBe(false);
  });

  it('side-loses-steps:Y: at the next homing its sides trip another distance apart', () => {
    const at = homed('side-loses-steps:Y', 'Y');
    const gap = () => {
      const before = at.told().length;
      at.bench.move('Y', 60);
      at.settle();
      at.bench.home('Y');
      at.settle();
      const reports = at.told().slice(before);
      const first = (input: number) =>
        reports.find(({ active }) => active[input] === '1')?.positions[index.Y] ?? Number.NaN;
      return first(2) - first(1);
    };
    const gaps = [gap(), gap(), gap()];
    expect(spread(gaps)).toBeGreaterThan(0.1);
  });

  it('racked, it feels with either side for its own switch', () => {
    const at = homed('side-ahead:Y', 'Y');
    expect(toldActive(at, 'y-left').length).toBeGreaterThan(5);
    expect(toldActive(at, 'y-right').length).toBeGreaterThan(5);
  });
});
