import { describe, expect, it } from 'vitest';
import type { Ask } from '../../src/model/ask.ts';
import { asksIn } from '../session/virtual-session.ts';
import { dangersIn, motionFound, motionSession } from './motion-bench.ts';

/**
 * Faults of motion that are no case of their own in the table of seeks, and exactly what is found: nothing less, nothing more. Reasoned from the machine (common practice,
 * no source), not read off the judges. In brackets: everything it can have been. An axis that failed its first seek is not sent home.
 */
const notHome = 'homing X: not-tested seek-not-proved';
const soundSeek = 'seek X: proved';
interface Row {
  readonly seek: string;
  readonly homing?: string;
  readonly dangers?: readonly string[];
}
const table: Readonly<Record<string, Row>> = {
  // Reported is not acted on.
  'switch-not-heeded:X': { seek: 'seek X: failed overruns not-acted-on', dangers: ['X overruns'] },
  // A switch that is reached is no proof of what the homing does with it.
  'zero-not-set:X': { seek: soundSeek, homing: 'homing X: failed zero-not-set(zero-not-set)' },
  // It was commanded as far as its travel and came to no switch: no setting of the seek is to blame.
  'blocked-halfway:X': { seek: 'seek X: failed no-trip(stopped-on-the-way)' },
  'at-other-end:x-home': { seek: 'seek X: failed no-trip(stopped-on-the-way)' },
};

describe('each planted fault of motion is found, and nothing else', () => {
  it.each(Object.entries(table))(
    '%s',
    async (fault, { seek, homing = notHome, dangers = [] }) => {
      const outcome = await motionSession({ fault });
      expect(motionFound(outcome)).toEqual([seek, homing]);
      expect(dangersIn(outcome)).toEqual(dangers);
    },
    60_000,
  );

  it('names crossed motors from the axis that moved, and the frame that two exchanged axes come to', async () => {
    const outcome = await motionSession({ fault: 'motors-crossed:X,Y', only: ['x-home', 'y-home', 'stop'] });
    expect(motionFound(outcome).slice(0, 3)).toEqual([
      'seek X: failed other-axis-moves(motors-crossed)',
      'seek Y: failed other-axis-moves(motors-crossed)',
      'seek axes: failed other-axis-moves(motors-crossed) other-axis-moves(motors-crossed)',
    ]);
    // A permutation of two rows of the unit matrix has the determinant −1.
    const { frame } = outcome.facts.verdicts.find(({ subject }) => subject === 'axes')?.facts ?? {};
    expect(frame).toMatchObject({
      says: 'mirrored',
      determinant: -1,
      ways: [
        { commanded: 'X', axis: 'Y', sign: 1 },
        { commanded: 'Y', axis: 'X', sign: 1 },
      ],
    });
  }, 60_000);
});

describe('a sound axis', () => {
  it('is proved by its seek and its homing, without an alarm', async () => {
    const outcome = await motionSession({});
    expect(motionFound(outcome)).toEqual(['seek X: proved', 'homing X: proved']);
    expect(dangersIn(outcome)).toEqual([]);
    const homing = outcome.facts.verdicts.find(({ check }) => check === 'homing')?.facts.homing;
    expect(homing?.seen).toEqual(
      expect.arrayContaining([
        'approach',
        'trip',
        'back-off',
        'clear',
        'slow approach',
        'slow trip',
        'release',
      ]),
    );
    // The bench's own settings: approach 15 mm/s, back-off 3 mm, slow 2 mm/s.
    expect(homing?.approachSpeed?.value).toBeCloseTo(15, 0);
    expect(homing?.slowSpeed?.value).toBeCloseTo(2, 0);
    expect(homing?.reaction).toBe('acted');
  }, 60_000);

  it('whose person is not sure of its way is judged by its proved switch, three trips in one place', async () => {
    const outcome = await motionSession({
      hands: {
        saysInstead: (ask) => (ask.action === 'look' && ask.topic === 'direction' ? 'not-sure' : undefined),
      },
    });
    expect(motionFound(outcome)[0]).toBe('seek X: proved');
    const seek = outcome.facts.verdicts.find(({ check }) => check === 'seek');
    expect(seek?.evidence).toBe('repeated');
    expect(seek?.facts.tracks).toHaveLength(3);
  }, 60_000);
});

describe('what goes wrong only after a sound seek', () => {
  // What was seen of the first move is no answer for a homing that does not come to its switch: it is asked again.
  it.each([
    ['direction-inverted:X', 'wrong-switch(direction-inverted, motor-coil-reversed)', 'X wrong-switch'],
    ['home-end-wrong:X', 'heads-away(seeks-wrong-end)', 'X heads-away'],
    ['motors-crossed:X,Y', 'wrong-switch(motors-crossed)', 'X wrong-switch'],
    ['crossed:x-home,y-home', 'wrong-switch(inputs-crossed)', 'X wrong-switch'],
    ['driver-off:X', 'no-trip(motor-stands-still)'],
    ['winding-open:X', 'no-trip(motor-stutters)'],
    ['turns-one-way:X', 'does-not-clear(does-not-turn-back)'],
    ['bent-lever:x-home', 'pressed-at-start(input-stuck)'],
    ['lost-at-speed:x-home', 'no-trip(trip-not-taken)'],
    ['brakes-late:X', 'overruns', 'X overruns'],
    ['switch-not-heeded:X', 'overruns not-acted-on', 'X overruns'],
  ])(
    'is found by the homing as it would have been by the seek: %s',
    async (later, found, ...dangers) => {
      const outcome = await motionSession({ later, laterAt: 'homing' });
      expect(motionFound(outcome)).toEqual(['seek X: proved', `homing X: failed ${found}`]);
      expect(dangersIn(outcome)).toEqual(dangers);
    },
    60_000,
  );
});

describe('what goes wrong only while an axis is homed again and again', () => {
  const checks = ['press', 'stop', 'seek', 'homing', 'repeat'] as const;
  const repeated = (later?: string) => motionSession({ checks, ...(later && { later, laterAt: 'repeat' }) });

  it.each([
    ['home-end-wrong:X', 'repeat X: failed heads-away', 'X heads-away'],
    ['switch-not-heeded:X', 'repeat X: failed overruns', 'X overruns'],
  ])(
    'is warned of and found there: %s',
    async (later, found, danger) => {
      const outcome = await repeated(later);
      expect(motionFound(outcome, ['repeat'])).toEqual([found]);
      expect(dangersIn(outcome)).toEqual([danger]);
    },
    60_000,
  );

  it('that a stream is too slow for it is said, with the pace that would do', async () => {
    const noGauge = (ask: Ask) =>
      ask.action === 'confirm' && ask.topic === 'has-gauge' ? ('no' as const) : undefined;
    const outcome = await motionSession({ checks, rate: 10, cycles: 4, hands: { saysInstead: noGauge } });
    expect(motionFound(outcome, ['repeat'])).toEqual(['repeat X: inconclusive too-coarse']);
    const { repeat } = outcome.facts.verdicts.find(({ check }) => check === 'repeat')?.facts ?? {};
    // By hand: half of the 0.1 mm to be kept, less a step of 0.0125 mm, at 2 mm/s: 18.75 ms.
    expect(repeat?.periodNeeded).toBe(18);
  }, 60_000);

  it('from the first of them on she is told how late a warning comes', async () => {
    const homings = asksIn(await repeated()).filter(
      ({ ask }) => ask.check === 'repeat' && ask.action === 'home',
    );
    expect(homings).toHaveLength(10);
    // Two reports at a hundred a second: 20 ms, and 0.3 mm at the 15 mm/s of the file.
    for (const { ask } of homings) expect(ask).toMatchObject({ late: { after: 20, by: 0.3 } });
  }, 60_000);
});

describe('a stream that reports seldom', () => {
  it.each([2, 5, 10].flatMap((rate) => [[rate, 'router'] as const, [rate, 'portal'] as const]))(
    'leaves trips to be inferred or verdicts open, and finds no fault on a sound machine: %d a second, the %s',
    async (rate, on) => {
      const all =
        on === 'router' ? ['x-home', 'y-home', 'z-home'] : ['x-ends', 'y-left', 'y-right', 'z-a-home'];
      const outcome = await motionSession({ rate, on, only: [...all, 'stop'] });
      const said = motionFound(outcome).filter((line) => !line.endsWith(': proved'));
      const fair = / (limited inferred-trip\(trip-between-reports\)|inconclusive [a-z-]+)$/;
      expect(said.filter((line) => !fair.test(line))).toEqual([]);
      expect(dangersIn(outcome)).toEqual([]);
    },
    60_000,
  );
});

describe('nothing moves', () => {
  it.each([
    ['before the stop is proved', { checks: ['press', 'seek', 'homing'] as const }, 'stop-not-proved'],
    ['before the switch is proved', { checks: ['stop', 'seek', 'homing'] as const }, 'input-unproved'],
  ])(
    '%s',
    async (_, given, missing) => {
      const outcome = await motionSession(given);
      expect(motionFound(outcome)[0]).toBe(`seek X: not-tested ${missing}`);
      const moves = outcome.events.filter(
        (event) => event.kind === 'ask' && ['move', 'seek', 'home'].includes(event.ask.action),
      );
      expect(moves).toEqual([]);
    },
    60_000,
  );

  it('where the person does not say that the way is free', async () => {
    const outcome = await motionSession({
      hands: {
        saysInstead: (ask) => (ask.action === 'confirm' && ask.topic === 'way-free' ? 'cannot' : undefined),
      },
    });
    expect(motionFound(outcome)).toEqual([
      'seek X: not-tested way-not-free',
      'homing X: not-tested seek-not-proved',
    ]);
  }, 60_000);
});
