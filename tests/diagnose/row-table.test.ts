import { describe, expect, it } from 'vitest';
import type { Answer, Ask } from '../../src/model/ask.ts';
import type { Level } from '../../src/model/reading.ts';
import { contact, lines, machineFrom, play, type Truth, type World } from './stage.ts';

const machine = machineFrom(`machine: Row bench
axes:
  X: { travel: 100 }
inputs:
  x-home: { duty: [home], axis: X, place: left, voltage: 5 V }
  y-home: { duty: [home], place: front, voltage: 5 V }
`);
const quiet = contact('y-home', 'normally closed', 'open');

/** An input whose three bits are written down, whatever wiring might give them. */
const bits = (row: string): Truth => {
  const bit = ({ pressed, out }: World) =>
    out.has('x-home') ? row[2] : pressed.has('x-home') ? row[1] : row[0];
  return {
    level: (world) => (bit(world) === '1' ? 'H' : 'L'),
    active: (world) => (bit(world) === '1' ? '1' : '0'),
  };
};

const about = (
  subject: string,
  truth: Truth,
  says?: (ask: Ask, count: number) => Answer | 'nothing' | undefined,
) =>
  lines(
    play({
      machine,
      truths: { 'x-home': truth, 'y-home': quiet },
      checks: ['press', 'open-wire'],
      ...(says && { says }),
    }).verdicts.filter((verdict) => verdict.subject === subject),
  );

describe('the row of rest, pressed, unplugged', () => {
  // Common practice, no source: an open circuit is one state, so an unplugged input equals rest on a normally open contact and pressed on a normally closed one.
  it.each([
    ['011', 'press x-home: proved', 'open-wire x-home: proved'],
    ['010', 'press x-home: proved', 'open-wire x-home: limited break-undetected'],
    ['100', 'press x-home: failed polarity-reversed', 'open-wire x-home: failed polarity-reversed'],
    [
      '101',
      'press x-home: failed polarity-reversed',
      'open-wire x-home: failed polarity-reversed break-undetected',
    ],
    ['001', 'press x-home: failed never-changes', 'open-wire x-home: failed never-changes'],
    ['110', 'press x-home: failed stuck-active', 'open-wire x-home: failed stuck-active'],
    ['000', 'press x-home: failed never-changes', 'open-wire x-home: inconclusive never-changes'],
    ['111', 'press x-home: failed stuck-active', 'open-wire x-home: failed stuck-active already-open'],
  ])('%s comes out as its line of the table', (row, press, openWire) => {
    expect(about('x-home', bits(row))).toEqual([press, openWire]);
  });

  it('judges the neighbour by its own row and no other', () => {
    expect(about('y-home', bits('111'))).toEqual(['press y-home: proved', 'open-wire y-home: proved']);
  });
});

describe('rest must be rest', () => {
  it('takes an active rest level for no rest while the person is not sure what stands on the switch', () => {
    const notSure = (ask: Ask) =>
      ask.action === 'look' && ask.topic === 'touched' ? ('not-sure' as const) : undefined;
    expect(about('x-home', bits('100'), notSure)).toEqual([
      'press x-home: inconclusive',
      'open-wire x-home: inconclusive',
    ]);
  });

  it('has the axis moved off a normally closed switch it stands on before calling anything reversed', () => {
    let held = true;
    const onSwitch = contact('x-home', 'normally closed', 'open');
    const truth: Truth = {
      level: (world) => onSwitch.level({ ...world, held: held ? new Set(['x-home']) : new Set() }),
      active: (world) => onSwitch.active({ ...world, held: held ? new Set(['x-home']) : new Set() }),
    };
    const says = (ask: Ask) => {
      if (ask.action === 'look') return held ? ('yes' as const) : ('no' as const);
      if (ask.action === 'release') held = false;
      return undefined;
    };
    expect(about('x-home', truth, says)).toEqual(['press x-home: proved', 'open-wire x-home: proved']);
  });
});

describe('what counts as evidence', () => {
  it('does not take a press nobody confirmed for a press of a dead switch', () => {
    const absent = (ask: Ask) =>
      ask.action === 'press' && ask.subject === 'x-home' ? ('nothing' as const) : undefined;
    const [press] = about('x-home', bits('011'), absent);
    expect(press).toBe('press x-home: inconclusive');
  });

  it('finds nothing about a broken wire where the press with the plug out was not made', () => {
    const noControl = (ask: Ask) =>
      ask.action === 'press' && ask.expect === 'no-answer' && ask.subject === 'x-home'
        ? ('cannot' as const)
        : undefined;
    expect(about('x-home', bits('010'), noControl)).toEqual([
      'press x-home: proved',
      'open-wire x-home: inconclusive',
    ]);
  });

  it('tells the wrong plug by a switch that still answers with its plug said to be out', () => {
    const says = undefined;
    const verdicts = play({
      machine,
      truths: { 'x-home': contact('x-home', 'normally open', 'closed'), 'y-home': quiet },
      checks: ['press', 'open-wire'],
      handles: (ask, subject) =>
        (ask.action === 'unplug' || ask.action === 'replug') && subject === 'x-home' ? 'probe' : subject,
      ...(says ?? {}),
    }).verdicts;
    expect(lines(verdicts)).toContain('open-wire x-home: inconclusive wrong-plug');
  });

  it('calls an open wire that will not hold a level floating', () => {
    const nc = contact('x-home', 'normally closed', 'open');
    const wander = (world: World): Level => (Math.floor(world.time / 130) % 2 === 0 ? 'H' : 'L');
    const conducting = (world: World) => !world.out.has('x-home') && !world.pressed.has('x-home');
    const truth: Truth = {
      level: (world) => (conducting(world) ? 'L' : world.out.has('x-home') ? wander(world) : 'H'),
      active: (world) => (world.out.has('x-home') ? (wander(world) === 'H' ? '1' : '0') : nc.active(world)),
    };
    expect(about('x-home', truth)[1]).toBe('open-wire x-home: failed floats-open');
  });

  it('calls an input flickering that changes with hands off, and sends nobody to press it', () => {
    const flicker: Truth = {
      level: ({ time }) => (Math.floor(time / 400) % 2 === 0 ? 'H' : 'L'),
      active: ({ time }) => (Math.floor(time / 400) % 2 === 0 ? '1' : '0'),
    };
    const { verdicts, asks } = play({
      machine,
      truths: { 'x-home': flicker, 'y-home': quiet },
      checks: ['rest', 'press', 'open-wire'],
    });
    expect(lines(verdicts).filter((each) => each.includes('x-home'))).toEqual([
      'rest x-home: failed flickers',
      'press x-home: failed flickers',
      'open-wire x-home: failed flickers',
    ]);
    expect(asks.some((ask) => ask.action === 'press' && ask.subject === 'x-home')).toBe(false);
  });

  it('tests no polarity where only levels are reported', () => {
    const truth = { ...contact('x-home', 'normally closed', 'open'), active: () => '?' as const };
    expect(about('x-home', truth)).toEqual([
      'press x-home: limited polarity-unknown',
      'open-wire x-home: limited polarity-unknown',
    ]);
  });

  it('calls an input not enabled whose level moves and whose report does not', () => {
    const truth = { ...contact('x-home', 'normally closed', 'open'), active: () => '0' as const };
    expect(about('x-home', truth)).toEqual([
      'press x-home: failed not-enabled',
      'open-wire x-home: failed not-enabled',
    ]);
  });
});
