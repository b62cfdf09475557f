import { describe, expect, it } from 'vitest';
import type { Ask } from '../../src/model/ask.ts';
import { contact, lines, machineFrom, play, type Truth, type World } from './stage.ts';

const machineText = (polarity: string) => `machine: Four switches
polarity: ${polarity}
axes:
  X: { travel: 100 }
inputs:
  a: { duty: [home], place: left, voltage: 5 V, connector: J1 }
  b: { duty: [home], place: right, voltage: 5 V, connector: J1 }
  c: { duty: [limit], place: front, voltage: 5 V, connector: J1 }
  d: { duty: [limit], place: back, voltage: 5 V, connector: J1 }
`;
const machine = machineFrom(machineText('each'));
const nc = (subject: string) => contact(subject, 'normally closed', 'open');
const healthy = { a: nc('a'), b: nc('b'), c: nc('c'), d: nc('d') };
const judged = (truths: Record<string, Truth>, more: Partial<Parameters<typeof play>[0]> = {}) =>
  lines(play({ machine, truths, checks: ['press', 'open-wire'], ...more }).verdicts);

/** Active if any of the given truths is: two cores that touch. */
const either = (...truths: Truth[]): Truth => ({
  level: (world) => (truths.some((each) => each.level(world) === 'H') ? 'H' : 'L'),
  active: (world) => (truths.some((each) => each.active(world) === '1') ? '1' : '0'),
});

describe('wires on the wrong terminal', () => {
  it('finds a crossed pair at both its switches and judges each broken wire on the input that answers', () => {
    const found = judged({ ...healthy, a: nc('b'), b: nc('a') });
    expect(found).toEqual([
      'press a: failed answers-elsewhere',
      'press b: failed answers-elsewhere',
      'press c: proved',
      'press d: proved',
      'open-wire a: failed answers-elsewhere',
      'open-wire b: failed answers-elsewhere',
      'open-wire c: proved',
      'open-wire d: proved',
    ]);
  });

  it('finds the crossed pair by the broken wire alone where presses were not asked for', () => {
    const found = judged({ ...healthy, a: nc('b'), b: nc('a') }, { checks: ['open-wire'] });
    expect(found.slice(0, 2)).toEqual([
      'open-wire a: failed answers-elsewhere',
      'open-wire b: failed answers-elsewhere',
    ]);
  });

  it('tells a plug that is one pin off from crossed wires', () => {
    const off: Truth = { level: () => 'H', active: () => '1' };
    const found = judged({ a: off, b: nc('a'), c: nc('b'), d: nc('c') }, { checks: ['press'] });
    expect(found.filter((each) => each.includes('shifted-plug'))).toEqual([
      'press a: failed answers-elsewhere shifted-plug',
      'press b: failed answers-elsewhere shifted-plug',
      'press c: failed answers-elsewhere shifted-plug',
    ]);
  });

  it('finds two cores that touch by two inputs that move together', () => {
    const both = either(nc('a'), nc('b'));
    expect(judged({ ...healthy, a: both, b: both }, { checks: ['press'] }).slice(0, 2)).toEqual([
      'press a: failed moves-together',
      'press b: failed moves-together',
    ]);
  });

  it('concludes nothing from presses that each answer on another input', () => {
    const handles = (ask: Ask, subject: string) =>
      ask.action === 'press' && subject === 'a' ? (['b', 'c', 'd'][ask.round - 1] ?? 'a') : subject;
    expect(judged(healthy, { checks: ['press'], handles })[0]).toBe(
      'press a: inconclusive conflicting-answers',
    );
  });
});

describe('one polarity setting for all inputs', () => {
  const shared = machineFrom(machineText('one for all'));
  const no = (subject: string) => contact(subject, 'normally open', 'open');

  it('names the inputs that turning the setting would break', () => {
    const { verdicts } = play({
      machine: shared,
      truths: { ...healthy, d: no('d') },
      checks: ['press', 'open-wire'],
    });
    const last = verdicts.find((each) => each.check === 'open-wire' && each.subject === 'd');
    expect(last && lines([last])).toEqual([
      'open-wire d: failed polarity-reversed polarity-shared break-undetected',
    ]);
    expect(last?.findings.find((each) => each.kind === 'polarity-shared')).toEqual({
      kind: 'polarity-shared',
      input: 'd',
      breaks: ['a', 'b', 'c'],
    });
  });

  it('breaks nothing where all are turned the same way', () => {
    const { verdicts } = play({
      machine: shared,
      truths: { a: no('a'), b: no('b'), c: no('c'), d: no('d') },
      checks: ['open-wire'],
    });
    expect(lines(verdicts).every((each) => !each.includes('polarity-shared'))).toBe(true);
  });
});

describe('contacts that behave badly', () => {
  it('calls a switch sticking that stays operated after the hand has let go', () => {
    let freed = 0;
    const sticky = nc('a');
    const stays = new Set<string>();
    const truth: Truth = {
      level: (world) => {
        if (world.pressed.has('a')) stays.add('a');
        return sticky.level({ ...world, held: stays });
      },
      active: (world) => sticky.active({ ...world, held: stays }),
    };
    const says = (ask: Ask) => {
      if (ask.action !== 'release') return undefined;
      freed++;
      stays.clear();
      return undefined;
    };
    const found = judged({ ...healthy, a: truth }, { checks: ['press'], says });
    expect(found[0]).toBe('press a: failed sticks');
    expect(freed).toBe(3);
  });

  it('counts bounce only where reports come fast enough to have shown it', () => {
    const bouncing = (world: World, since: number) => world.pressed.has('a') && world.time - since < 60;
    let since = 0;
    const base = nc('a');
    const truth: Truth = {
      level: (world) => {
        if (!world.pressed.has('a')) since = world.time;
        return bouncing(world, since) && Math.floor(world.time / 5) % 2 === 0 ? 'L' : base.level(world);
      },
      active: (world) =>
        bouncing(world, since) && Math.floor(world.time / 5) % 2 === 0 ? '0' : base.active(world),
    };
    expect(judged({ ...healthy, a: truth }, { checks: ['press'], period: 5 })[0]).toBe(
      'press a: limited chatters',
    );
    since = 0;
    expect(judged({ ...healthy, a: truth }, { checks: ['press'], period: 50 })[0]).toBe('press a: proved');
  });

  it('never turns a missed press into a share of good ones', () => {
    let presses = 0;
    const handles = (ask: Ask, subject: string) =>
      ask.action === 'press' && subject === 'a' && ++presses === 2 ? 'nothing' : subject;
    expect(judged(healthy, { checks: ['press'], handles })[0]).toBe('press a: failed misses-presses');
  });
});

describe('chains of switches on one input', () => {
  const chain = machineFrom(`machine: Chain
axes:
  Y: { travel: 100 }
inputs:
  y-limits:
    joined: series
    voltage: 5 V
    switches:
      y-min: { axis: Y, end: negative, duty: [limit], contact: normally closed, place: front }
      y-max: { axis: Y, end: positive, duty: [limit], contact: normally closed, place: back }
`);
  const series = either(nc('y-limits/y-min'), nc('y-limits/y-max'));

  it('judges every switch of a series chain by itself', () => {
    expect(
      lines(
        play({ machine: chain, truths: { 'y-limits': series }, checks: ['press', 'open-wire'] }).verdicts,
      ),
    ).toEqual([
      'press y-limits/y-min: proved',
      'press y-limits/y-max: proved',
      'open-wire y-limits/y-min: proved',
      'open-wire y-limits/y-max: proved',
    ]);
  });

  it('cannot see the second switch while the first is still unplugged', () => {
    const says = (ask: Ask) => (ask.action === 'replug' ? ('cannot' as const) : undefined);
    const { verdicts } = play({
      machine: chain,
      truths: { 'y-limits': series },
      checks: ['press', 'open-wire'],
      says,
    });
    const found = lines(verdicts);
    expect(found).toContain('open-wire y-limits/y-min: inconclusive still-out');
    expect(found).toContain('open-wire y-limits/y-max: inconclusive chain-blocked');
    // What was proved before is taken back, for the machine that hangs unplugged is not the machine that was proved.
    expect(found.filter((each) => each.startsWith('press')).slice(-2)).toEqual([
      'press y-limits/y-min: inconclusive still-out',
      'press y-limits/y-max: inconclusive still-out',
    ]);
  });
});

describe('inputs that change by themselves', () => {
  /** A pulse of 60 ms every so many ms, whoever is at the machine. */
  const pulsing = (every: number): Truth => ({
    level: ({ time }) => (time % every < 60 ? 'H' : 'L'),
    active: ({ time }) => (time % every < 60 ? '1' : '0'),
  });
  const nobody = (ask: Ask) => (ask.action === 'press' ? ('nothing' as const) : undefined);

  it('are heard before anyone is asked to press, even where the rest check was left out', () => {
    const found = judged({ ...healthy, a: pulsing(700) }, { says: nobody, checks: ['press'] });
    expect(found[0]).toBe('press a: failed flickers');
  });

  it('are not taken for presses where the person says that nobody pressed', () => {
    const says = (ask: Ask) =>
      ask.action === 'confirm' && ask.topic === 'pressed' ? ('no' as const) : nobody(ask);
    const found = judged({ ...healthy, a: pulsing(15_000) }, { says, checks: ['press'] });
    expect(found[0]).toBe('press a: failed flickers');
  });

  it('prove nothing where the person cannot say whether she pressed', () => {
    const says = (ask: Ask) =>
      ask.action === 'confirm' && ask.topic === 'pressed' ? ('not-sure' as const) : nobody(ask);
    expect(judged({ ...healthy, a: pulsing(15_000) }, { says, checks: ['press'] })[0]).toBe(
      'press a: inconclusive',
    );
  });

  it('answer late where each press was held and told of for a moment only', () => {
    const says = (ask: Ask) =>
      ask.action === 'confirm' && ask.topic === 'pressed' ? ('yes' as const) : nobody(ask);
    expect(judged({ ...healthy, a: pulsing(15_000) }, { says, checks: ['press'] })[0]).toBe(
      'press a: limited slow-answer',
    );
  });

  it('are found by what they do while others are pressed, and cost the others nothing', () => {
    const found = judged({ ...healthy, d: pulsing(3100) }, { checks: ['press'] });
    expect(found.filter((each) => !each.includes(' d:')).every((each) => each.endsWith('proved'))).toBe(true);
    expect(found.find((each) => each.includes(' d:'))).toBe('press d: failed flickers');
  });
});
