import { describe, expect, it } from 'vitest';
import { stand } from './stand.ts';
import { homed, index, moved, toldActive } from './watched.ts';

describe('how the controller is set to home', () => {
  it('home-end-wrong:X: it seeks the far end, moving as it counts', () => {
    const { eyes, last, told } = homed('home-end-wrong:X');
    expect([eyes.wayOf('X'), eyes.reached('X'), last().activity]).toEqual(['positive', false, 'fault']);
    expect(Math.max(...told().map(({ positions }) => positions[index.X] ?? 0))).toBeGreaterThan(500);
  });

  it('mirrored:X: counted away from its switch it goes to it, and homing works', () => {
    const { eyes, last, told } = homed('mirrored:X');
    expect([eyes.wayOf('X'), eyes.reached('X'), eyes.cameBack('X')]).toEqual(['negative', true, true]);
    expect(last()).toMatchObject({ activity: 'still', positions: [0, 0, 0] });
    expect(Math.max(...told().map(({ positions }) => positions[index.X] ?? 0))).toBeGreaterThan(230);
  });

  it('zeroed-in-place:X: the number changes, nothing moves, no input', () => {
    const at = stand({ faults: ['zeroed-in-place:X'] });
    at.bench.move('X', 12);
    at.settle();
    at.bench.eyes.watch();
    at.bench.home('X');
    at.wait(200);
    expect(at.last().positions[index.X]).toBe(0);
    expect(at.bench.eyes.wayOf('X')).toBe('none');
    expect(at.bench.eyes.position('X')).toBeCloseTo(243.4, 6);
  });

  it('stays-on-switch:X: it stops at its trip and ends in a fault there', () => {
    const { eyes, last, active } = homed('stays-on-switch:X');
    expect([eyes.reached('X'), eyes.cameBack('X'), active('x-home')]).toEqual([true, false, '1']);
    expect(last().activity).toBe('fault');
  });

  it('switch-not-heeded:X: its trip is told, and it pushes on into the metal', () => {
    const { eyes, active, last } = homed('switch-not-heeded:X');
    expect([eyes.position('X'), active('x-home'), eyes.buzzed('X')]).toEqual([-12, '1', true]);
    expect(last().positions[index.X]).toBeLessThan(-600);
  });

  it('back-off-short:X: moved back, its switch stays operated', () => {
    const { eyes, active, last } = homed('back-off-short:X');
    expect([eyes.reached('X'), active('x-home'), last().activity]).toEqual([true, '1', 'fault']);
    // It turned back by half the way between trip and release.
    expect(Math.abs(eyes.position('X') + 2.8)).toBeLessThan(0.15);
  });

  it('back-off-long:X: its back-off runs into the switch at the other end', () => {
    const at = homed('back-off-long:X');
    expect(toldActive(at, 'x-far').length).toBeGreaterThan(5);
    expect(toldActive(homed([]), 'x-far')).toHaveLength(0);
  }, 20_000);

  it('seek-short:X: it gives up after one length, from wherever it starts', () => {
    const at = homed('seek-short:X');
    const first = at.eyes.wayMade('X');
    expect([at.eyes.reached('X'), at.last().activity]).toEqual([false, 'fault']);
    at.bench.clear();
    at.bench.move('X', 200);
    at.settle();
    at.eyes.watch();
    at.bench.home('X');
    at.settle();
    expect(at.eyes.wayMade('X')).toBeCloseTo(first, 3);
  });

  it('crawls:X: a twentieth of its speed', () => {
    const { bench, wait, last } = stand({ faults: ['crawls:X'] });
    bench.home('X');
    wait(2000);
    const from = last().positions[index.X] ?? 0;
    wait(10_000);
    expect((last().positions[index.X] ?? 0) - from).toBeCloseTo(-7.5, 1);
  });

  it('brakes-late:X: it comes to rest further behind its trip than its switch may be driven', () => {
    const behind = (fault: readonly string[]) => -3 - Math.min(...toldActive(homed(fault), 'x-home')) - 231.4;
    expect(behind(['brakes-late:X'])).toBeGreaterThan(3);
    expect(behind([])).toBeLessThan(1);
    expect(behind([])).toBeGreaterThan(0.2);
  });

  it('zero-not-set:X: it homes to its end and keeps its old numbers', () => {
    const { eyes, last } = homed('zero-not-set:X');
    expect(last().activity).toBe('still');
    expect(eyes.position('X')).toBeCloseTo(0, 1);
    expect(last().positions[index.X]).toBeCloseTo(-231.4, 0);
  });

  it('spindle-last: X and Y go before Z', () => {
    const { told } = homed('spindle-last', 'all');
    const first = (axis: number) => told().findIndex(({ positions }) => positions[axis] !== 0);
    expect(first(index.Z)).toBeGreaterThan(first(index.X));
    expect(first(index.Z)).toBeGreaterThan(first(index.Y));
  });

  it('touches-work:Z: it goes down until the probe answers', () => {
    const at = homed('touches-work:Z', 'Z');
    expect(at.eyes.wayOf('Z')).toBe('negative');
    expect(toldActive(at, 'probe').length).toBeGreaterThan(5);
    expect(toldActive(at, 'z-home')).toHaveLength(0);
  });

  it('shorter-way:A: it finds its switch from either flank of its dog, a healthy one from one side only', () => {
    const trips = (fault: readonly string[]) =>
      [0, 250].map((before) => {
        const at = stand({ faults: ['side-off:Y', ...fault] });
        at.bench.move('A', before);
        at.settle();
        at.bench.home('A');
        at.settle();
        return ((at.bench.eyes.position('A') % 360) + 360) % 360;
      });
    for (const place of trips([])) expect(Math.min(place, 360 - place)).toBeLessThan(0.3);
    const [back = 0, on = 0] = trips(['shorter-way:A']);
    expect(Math.min(on, 360 - on)).toBeLessThan(0.3);
    // Its dog is 8 degrees wide, from 3 to 11; backed off by 3 from the far flank it stands at 14.
    expect(Math.abs(back - 14)).toBeLessThan(0.3);
  });
});

describe('what the controller does while it moves', () => {
  it('trips-untold:x-home: it homes by an input whose trips no report shows', () => {
    const at = homed('trips-untold:x-home');
    expect(toldActive(at, 'x-home')).toHaveLength(0);
    expect([at.last().activity, at.eyes.cameBack('X')]).toEqual(['still', true]);
    expect(toldActive(homed([]), 'x-home').length).toBeGreaterThan(5);
  });

  it('silent-while-homing: no report between its start and its end', () => {
    const { told } = homed('silent-while-homing');
    expect(told().some(({ activity }) => activity === 'homing')).toBe(false);
    const gaps = told().map(({ ms }, i) => ms - (told()[i - 1]?.ms ?? ms));
    expect(Math.max(...gaps)).toBeGreaterThan(5000);
  });

  it('a limit tripped in a move halts it in a fault; limits-only-reported: it pushes on', () => {
    const sound = moved([], 'X', 500);
    expect([sound.last().activity, sound.eyes.buzzed('X')]).toEqual(['fault', false]);
    expect(sound.eyes.position('X')).toBeLessThan(618);
    const faulty = moved('limits-only-reported', 'X', 500);
    expect([faulty.last().activity, faulty.eyes.buzzed('X')]).toEqual(['still', true]);
    expect(faulty.eyes.position('X')).toBe(618);
  });

  it('refuses-at-limit: nothing starts while another axis stands on its limit', () => {
    const { eyes, last } = homed(['refuses-at-limit', 'held-at-rest:y-far']);
    expect([eyes.moved, last().activity]).toEqual([[], 'still']);
    expect(homed(['refuses-at-limit']).eyes.reached('X')).toBe(true);
  });

  it('a homed axis refuses a target outside its soft limits; soft-limits-outside:X: it runs onto its switch', () => {
    const outcome = (fault: readonly string[]) => {
      const { bench, settle, last, active } = homed(fault);
      bench.move('X', 612);
      settle();
      return [last().activity, active('x-far')];
    };
    expect(outcome([])).toEqual(['fault', '0']);
    expect(outcome(['soft-limits-outside:X'])).toEqual(['fault', '1']);
  });

  it('restarts-after-homing: the first move loses every number', () => {
    const { bench, wait, last, eyes } = homed('restarts-after-homing', 'all');
    const clock = last().ms;
    bench.move('X', 100);
    wait(5000);
    expect(last().ms).toBeLessThan(clock);
    expect(last().positions).toEqual([0, 0, 0]);
    expect(eyes.position('X')).toBeGreaterThan(2);
  });

  it('noise-while-moving:x-home: its trips are told while a motor turns, never at rest', () => {
    const at = stand({ faults: ['noise-while-moving:x-home'] });
    expect(at.watch('x-home', 30_000)).not.toContain('H');
    at.bench.move('X', 300, 15);
    expect(at.watch('x-home', 15_000)).toContain('H');
    const { eyes, last } = homed('noise-while-moving:x-home');
    expect([eyes.reached('X'), last().activity]).toEqual([false, 'fault']);
  });
});
