import { describe, expect, it } from 'vitest';
import type { Ask } from '../../src/model/ask.ts';
import { seconds } from '../../src/model/units.ts';
import { person } from './person.ts';

const common = { check: 'seek', seconds: seconds(20) } as const;

describe('a person at her own control', () => {
  const seekOf = (axis: string): Ask => ({ ...common, check: 'seek', action: 'seek', axis }) as Ask;
  const lookAt = (topic: string, axis: string): Ask =>
    ({ ...common, check: 'seek', action: 'look', topic, axis }) as Ask;

  /** Asks a look and gives the answer. */
  const sees = ({ ask }: ReturnType<typeof person>, topic: string, axis: string) =>
    ask(lookAt(topic, axis), 4000);

  it('starts what she is asked to start, and says done when it has come to rest', () => {
    const at = person();
    expect(at.ask(seekOf('X'), 30_000)).toBe('done');
    expect(at.bench.eyes.reached('X')).toBe(true);
    expect(at.bench.eyes.isMoving()).toBe(false);
  });

  it.each([
    [[], 'negative yes no no'],
    [['direction-inverted:X'], 'positive no yes no'],
    [['motors-crossed:X,Y'], 'none no no yes'],
    [['winding-open:X'], 'none no yes no'],
    [['driver-off:X'], 'none no no no'],
  ])(
    'says which way it went, whether it reached its switch, buzzed, moved another: %j',
    (faults, expected) => {
      const at = person(faults);
      at.ask(seekOf('X'), 90_000);
      const said = ['direction', 'reached', 'buzzed', 'moved-other'].map((topic) => sees(at, topic, 'X'));
      expect(said.join(' ')).toBe(expected);
    },
  );

  it('hits the stop within a second of a warning: what moves stands, and the drives are off', () => {
    const at = person(['home-end-wrong:X']);
    at.hands.asked(90, seekOf('X'));
    at.wait(5000);
    expect(at.bench.eyes.isMoving()).toBe(true);
    at.hands.danger();
    const before = at.bench.eyes.position('X');
    at.wait(300);
    expect(at.bench.eyes.isMoving()).toBe(true);
    at.wait(700);
    expect([at.bench.eyes.isMoving(), at.bench.eyes.drivesHavePower()]).toEqual([false, false]);
    expect(at.bench.eyes.position('X') - before).toBeLessThan(15);
    // Asked for another, she lets it out and switches on first.
    expect(at.ask({ ...common, check: 'homing', action: 'home', axis: 'Z' } as Ask, 60_000)).toBe('done');
    expect(at.last().positions[2]).toBe(0);
  });

  it('may not hear it', () => {
    const at = person(['home-end-wrong:X'], { ignoresDanger: true });
    at.hands.asked(91, seekOf('X'));
    at.wait(5000);
    at.hands.danger();
    at.wait(2000);
    expect(at.bench.eyes.isMoving()).toBe(true);
  });

  it.each([
    ['scale-off:X', 101.6],
    ['driver-off:X', 0],
  ])('measures how far it really went with a calliper: %s', (fault, expected) => {
    const at = person([fault]);
    at.ask(
      {
        ...common,
        check: 'scale',
        action: 'move',
        axis: 'X',
        direction: 'positive',
        distance: 100,
        unit: 'mm',
      } as Ask,
      9000,
    );
    const measure = {
      ...common,
      check: 'scale',
      action: 'measure',
      quantity: 'distance',
      unit: 'mm',
      axis: 'X',
    };
    expect(at.ask({ ...measure, where: 'way of the tool over the work' } as Ask, 9000)).toBe('value');
    expect(Math.abs((at.said.at(-1)?.value ?? Number.NaN) - expected)).toBeLessThanOrEqual(0.1);
  });

  it('reads a dial gauge to its hundredth, and has nothing to measure where it does not reach', () => {
    const at = person();
    const gauge = {
      ...common,
      check: 'repeat',
      action: 'measure',
      quantity: 'distance',
      unit: 'mm',
      axis: 'X',
      where: 'trip on a dial gauge',
    } as Ask;
    expect([at.ask(gauge, 4000), at.said.at(-1)?.value]).toEqual(['value', 0]);
    at.bench.move('X', 1.2375);
    at.settle();
    expect([at.ask(gauge, 4000), at.said.at(-1)?.value]).toEqual(['value', 1.24]);
    at.bench.move('X', 50);
    at.settle();
    expect(at.ask(gauge, 4000)).toBe('cannot');
  });

  it.each([
    ['side-reversed:Y', 'racked', 'Y'],
    ['sags:Z', 'sagged', 'Z'],
    ['beyond-dog:x-home', 'past-switch', 'X'],
  ])('sees what only eyes can see: %s', (fault, topic, axis) => {
    const faulty = person([fault]);
    faulty.ask(seekOf(axis), 120_000);
    expect(sees(faulty, topic, axis)).toBe('yes');
    const sound = person();
    sound.ask(seekOf(axis), 120_000);
    expect(sees(sound, topic, axis)).toBe('no');
  });
});
