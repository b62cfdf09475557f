import { describe, expect, it } from 'vitest';
import { faultList, faultNames } from '../../src/bench/faults.ts';
import { machineFor } from '../../src/bench/machines.ts';
import { stand } from './stand.ts';
import { homed, index, moved } from './watched.ts';

describe('between the pulses and the carriage', () => {
  it.each(['direction-inverted:X', 'leads-turned:X'])('%s: counted one way, moved the other', (fault) => {
    const { way, last } = moved(fault, 'X', 20);
    expect(last().positions[index.X]).toBeCloseTo(20, 3);
    expect(way).toBeCloseTo(-20, 6);
    const { eyes, last: told } = homed(fault);
    expect([eyes.wayOf('X'), eyes.reached('X'), eyes.buzzed('X')]).toEqual(['positive', false, true]);
    expect(eyes.position('X')).toBe(618);
    expect(told().activity).toBe('fault');
  });

  it('motors-crossed:X,Y: the other axis moves, and works its own switch', () => {
    const { eyes, last, told, names } = homed('motors-crossed:X,Y');
    expect([eyes.wayOf('X'), eyes.wayOf('Y'), eyes.moved]).toEqual(['none', 'negative', ['Y']]);
    expect(told().some(({ active }) => active[names().indexOf('y-home')] === '1')).toBe(true);
    expect(told().every(({ positions }) => positions[index.Y] === 0)).toBe(true);
    expect(last().activity).toBe('fault');
  });

  it.each(['driver-off:X', 'uncoupled:X'])(
    '%s: the count goes on, the axis stands still without a sound',
    (fault) => {
      const { eyes, last, told } = homed(fault);
      expect([eyes.wayOf('X'), eyes.buzzed('X'), eyes.position('X')]).toEqual(['none', false, 231.4]);
      expect(Math.min(...told().map(({ positions }) => positions[index.X] ?? 0))).toBeLessThan(-600);
      expect(last().activity).toBe('fault');
    },
  );

  it('winding-open:X: the motor buzzes and the axis stands still', () => {
    const { eyes } = homed('winding-open:X');
    expect([eyes.wayOf('X'), eyes.buzzed('X')]).toEqual(['none', true]);
  });

  it('loses-steps:X: it comes home all the same, and finds its switch elsewhere each time', () => {
    const { bench, eyes, told, settle } = homed('loses-steps:X');
    expect(eyes.position('X')).toBeCloseTo(0, 1);
    const shifts = [1, 2, 3].map(() => {
      bench.move('X', 100, 10);
      settle();
      const before = told().length;
      bench.home('X');
      settle();
      const positions = told()
        .slice(before)
        .map((each) => each.positions[index.X] ?? 0);
      return Math.min(...positions);
    });
    expect(Math.max(...shifts) - Math.min(...shifts)).toBeGreaterThan(0.2);
  });

  it('turns-one-way:X: sent back off its switch it drives on into the metal', () => {
    const { eyes, last } = homed('turns-one-way:X');
    expect([eyes.reached('X'), eyes.cameBack('X'), last().activity]).toEqual([true, false, 'fault']);
    expect(eyes.position('X')).toBeLessThan(-6);
  });

  it('scale-off:X: moves further than it counts, by 1.6 %, both ways', () => {
    expect(moved('scale-off:X', 'X', 100).way).toBeCloseTo(101.6, 6);
    expect(moved('scale-off:X', 'X', -50).way).toBeCloseTo(-50.8, 6);
  });

  it('backlash:X: at each reversal 0.3 mm are counted that are not moved, whatever the length', () => {
    const { bench, settle } = stand({ faults: ['backlash:X'] });
    const ways = [50, -10, -10, 10, 40].map((by) => {
      bench.eyes.watch();
      bench.move('X', by);
      settle();
      return Number(bench.eyes.wayMade('X').toFixed(3));
    });
    expect(ways).toEqual([49.7, -9.7, -10, 9.7, 40]);
  });

  it('blocked-halfway:X: it meets something half-way, and the count goes on', () => {
    const { eyes } = homed('blocked-halfway:X');
    expect(eyes.position('X')).toBeCloseTo((231.4 - 3) / 2, 3);
    expect([eyes.wayOf('X'), eyes.reached('X'), eyes.buzzed('X')]).toEqual(['negative', false, true]);
  });

  it('sags:Z: it drops as it sets off, and homes', () => {
    const { eyes, last } = homed('sags:Z', 'Z');
    expect([eyes.sagged('Z'), last().positions[index.Z], last().activity]).toEqual([true, 0, 'still']);
    expect(homed([], 'Z').eyes.sagged('Z')).toBe(false);
  });
});

describe('the catalogue of motion', () => {
  it('has words for each, and none of them on the stream', () => {
    const spelled = faultList.map(({ usage }) =>
      usage
        .replace('<axis>,<axis>', 'X,Y')
        .replace('<axis>', usage.startsWith('side-') ? 'Y' : usage.startsWith('shorter') ? 'A' : 'Z')
        .replace('<input>,<input>', 'x-home,y-home')
        .replace('<input>', 'x-home')
        .replace('<switch>', 'x-home')
        .replace('<connector>', 'P1'),
    );
    expect(spelled).toHaveLength(faultNames.length);
    for (const fault of spelled.filter((each) => /^(side|shorter)/.test(each))) {
      expect(machineFor([fault]).file).toContain('motors: 2');
      expect(() => stand({ faults: [fault] })).not.toThrow();
    }
    for (const fault of ['mirrored:X', 'scale-off:Y', 'crawls:Z', 'noise-while-moving:y-home']) {
      const { bench, settle, lines } = stand({ faults: [fault] });
      bench.home('Z');
      settle();
      const text = lines.map((each) => each.text).join('');
      expect(text).not.toContain(fault.split(':')[0]);
      expect(text).not.toMatch(/mirror|scale|crawl|noise/);
    }
  });
});
